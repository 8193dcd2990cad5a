/**
 * Racing state changes and retried posts over real connections: what wins, what is lost, what is doubled.
 * npm run bench -- races [submissions, 200] [posts, 2000]
 */
import { setUpBench } from '../support/bench.js';
import { listen, raceStateChanges, retriedPosts, submissionsToRace } from '../support/races.js';
import { startTestServer } from '../support/test-server.js';

const [submissions = 200, posts = 2000] = process.argv.slice(2).map(Number);
const CLIENTS = 50;
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const b = await setUpBench();
try {
  const port = await listen(b);
  const count = async (statement: string): Promise<number> => Number((await b.sql(statement))[0]?.['count']);
  const race = await raceStateChanges(b, port, await submissionsToRace(b, port, submissions), CLIENTS);
  const changes = await count('SELECT (SELECT count(*) FROM review) + (SELECT count(*) FROM trace) AS count');
  console.log(
    `${race.requests} changes of ${submissions} submissions by ${CLIENTS} clients in ${race.seconds.toFixed(1)} s: answers ${JSON.stringify(race.statuses)}`,
  );
  console.log(`submissions without exactly one winner: ${race.without.length}; changes on record: ${changes}, expected ${submissions}`);
  const before = await count('SELECT count(*) FROM submission');
  const retries = await retriedPosts(b, port, posts);
  const added = (await count('SELECT count(*) FROM submission')) - before;
  console.log(
    `${posts} posts sent five times each, ${retries.torn} connections torn, in ${retries.seconds.toFixed(1)} s: ${added} submissions added`,
  );
  console.log(`keys without one and the same answer: ${retries.without.length}`);
  process.exitCode = race.without.length + retries.without.length === 0 && changes === submissions && added === posts ? 0 : 1;
} finally {
  await b.t.close();
  await server.stop();
}
process.exit();

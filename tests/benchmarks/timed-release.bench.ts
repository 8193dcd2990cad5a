/**
 * How late a release is that waits for its time, to whoever asks the API and to whoever reads the site; beside it one that does not wait,
 * whose site is built after it is published.
 * npm run bench -- timed-release [releases, 3] [seconds before, 90]
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';

const [releases, before] = [Number(process.argv[2] ?? 3), Number(process.argv[3] ?? 90)];
const LOOK_MS = 10;
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const house = await createHouse();
const { clock } = house.t;
const [first, began] = [clock.time.getTime(), performance.now()];
// A clock that goes, where those of tests stand.
clock.now = () => new Date(first + performance.now() - began);
const now = () => clock.now().getTime();

/** The revision that the site shows; 0 while it shows none. */
const onSite = async (): Promise<number> => {
  const page = await readFile(join(house.t.dataFolder, 'site/current/editions/2026/index.html'), 'utf8').catch(() => '');
  return Number(/revision (\d+), published/.exec(page)?.[1] ?? 0);
};
const revision = async (): Promise<number> =>
  ((await house.t.call('get', '/v1/releases')).body as { items: { revision: number }[] }).items[0]?.revision ?? 0;

/** When a revision is first seen, by the clock of the house [ms]. */
async function whenSeen(look: () => Promise<number>, wanted: number): Promise<number> {
  while ((await look()) < wanted) await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
  return now();
}

try {
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  await house.t.app.select(ReleasesModule).get(ReleaseWork).start(true);
  await publish(house.editor, '2026');
  const published = now();
  console.log(`| at once | site ${Math.round((await whenSeen(onSite, 1)) - published)} ms after it is published |`);
  for (let i = 0; i < releases; i++) {
    const publishAt = new Date(now() + before * 1000);
    const erratum = await erratumFor(house.editor, '2026', 'catalogueError', `Correction ${i + 1}.`);
    const seen = Promise.all([whenSeen(revision, i + 2), whenSeen(onSite, i + 2)]);
    await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum, publishAt: publishAt.toISOString() }).expect(202);
    const [api, site] = (await seen).map((at) => Math.round(at - publishAt.getTime()));
    console.log(`| at its time | API ${api} ms late | site ${site} ms late |`);
  }
} finally {
  await house.t.close();
  await server.stop();
}
process.exit(0);

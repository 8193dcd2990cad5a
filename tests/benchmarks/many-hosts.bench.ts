/**
 * Two workers and two servers on one database and one data folder: publications one after the other, what is lost, and how soon each server shows them.
 * npm run bench -- many-hosts [publications, 50]
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { releasesAt } from '../../api/releases/verify/release-source.js';
import { verifyRelease } from '../../api/releases/verify/verify-release.js';
import { createHouse, workEdition } from '../support/house.js';
import { end, startProgram, startServer, until } from '../support/programs.js';
import { erratumFor, moveEdition, publish } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';

const count = Number(process.argv[2] ?? 50);
const database = await startTestServer();
process.env['TEST_SERVER_URL'] = database.url;
const house = await createHouse();
const workers = [startProgram(house.t, ['api/worker.ts']), startProgram(house.t, ['api/worker.ts'])];
const servers = [await startServer(house.t), await startServer(house.t)];
try {
  await workEdition(house, '2026');
  await moveEdition(house.editor, '2026', 'closure');
  let [longestMs, lost] = [0, 0];
  const began = performance.now();
  for (let revision = 1; revision <= count; revision += 1) {
    const erratum = revision === 1 ? null : await erratumFor(house.editor, '2026', 'catalogueError', `Correction ${revision}.`);
    if ((await publish(house.editor, '2026', erratum)) !== revision) lost += 1;
    const published = performance.now();
    await Promise.all(servers.map(({ port }) => until(`port ${port} shows revision ${revision}`, () => shows(port, revision))));
    longestMs = Math.max(longestMs, performance.now() - published);
  }
  const seconds = (performance.now() - began) / 1000;
  const page = join(house.t.dataFolder, 'site/current/editions/2026/index.html');
  await until('the site shows the last', async () => (await readFile(page, 'utf8')).includes(`Correction ${count}.`));
  let differences = 0;
  for (let revision = 1; revision <= count; revision += 1) {
    const [source] = await releasesAt(`http://127.0.0.1:${servers[revision % 2]!.port}/v1/releases/2026/${revision}/`);
    differences += source ? (await verifyRelease(source)).differences.length : 1;
  }
  const alive = workers.filter(({ exitCode }) => exitCode === null).length;
  console.log(
    `${count} publications in ${seconds.toFixed(0)} s: ${lost} lost, ${differences} differences when verified; both servers showed each within ${longestMs.toFixed(0)} ms of its publication; the site shows the last; ${alive} of 2 workers run on.`,
  );
  process.exitCode = lost === 0 && differences === 0 && alive === 2 ? 0 : 1;
} finally {
  for (const { child } of servers) await end(child, 'SIGTERM');
  for (const child of workers) await end(child, 'SIGTERM');
  await house.t.close();
  await database.stop();
}
process.exit();

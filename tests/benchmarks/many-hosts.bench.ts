/**
 * Two workers and two servers on one database and one data folder: publications one after the other, what is lost, and how soon each server shows them.
 * npm run bench -- many-hosts [publications, 50]
 */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ReleaseWork } from '../../api/releases/publication/release-work.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
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
await workEdition(house, '2026');
await moveEdition(house.editor, '2026', 'closure');
await house.editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
await house.t.app.select(ReleasesModule).get(ReleaseWork).publishDue();
const workers = [startProgram(house.t, ['api/worker.ts']), startProgram(house.t, ['api/worker.ts'])];
const servers = [await startServer(house.t), await startServer(house.t)];
const last = count + 1;
try {
  let [longestMs, lost] = [0, 0];
  const began = performance.now();
  for (let revision = 2; revision <= last; revision += 1) {
    const erratum = await erratumFor(house.editor, '2026', 'catalogueError', `Correction ${revision}.`);
    if ((await publish(house.editor, '2026', erratum)) !== revision) lost += 1;
    const published = performance.now();
    await Promise.all(servers.map(({ port }) => until(`port ${port} shows revision ${revision}`, () => shows(port, revision))));
    longestMs = Math.max(longestMs, performance.now() - published);
  }
  const seconds = (performance.now() - began) / 1000;
  const page = join(house.t.dataFolder, 'site/current/editions/2026/index.html');
  await until('the site shows the last', async () => (await readFile(page, 'utf8')).includes(`Correction ${last}.`));
  let differences = 0;
  for (let revision = 1; revision <= last; revision += 1) {
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

async function shows(port: number, revision: number): Promise<boolean> {
  const answer = await fetch(`http://127.0.0.1:${port}/v1/editions`);
  const { items } = (await answer.json()) as { items: { edition: string; revision: number }[] };
  return items.some((one) => one.edition === '2026' && one.revision === revision);
}

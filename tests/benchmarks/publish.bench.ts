/**
 * From the order to live pages, for an edition of many entries, by a worker as it runs: where the time goes, and what it holds in memory. Beyond a hundred entries
 * stand in divisions of sixty; `60x30` has 29 published editions of as many entries before it.
 * npm run bench -- publish [entries or entries x editions, 100]
 */
import type { ChildProcess } from 'node:child_process';
import { readlink } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { computeInParts } from '../../api/reckoning/compute-release.js';
import { GatherRelease } from '../../api/releases/publication/gather-release.js';
import { PublishRelease } from '../../api/releases/publication/publish-release.js';
import { ReleasesModule } from '../../api/releases/releases.module.js';
import { createHouse, workEdition } from '../support/house.js';
import { ended, startWorker } from '../support/kill-publication.js';
import { runSql } from '../support/run-sql.js';
import { MAKERS, moveEdition } from '../support/season.js';
import { startTestServer } from '../support/test-server.js';
import { memoryOf } from './memory-of.js';
import { editionsBefore, multiplyVariants } from './multiply-record.js';

const IN_ONE_TABLE = 100;
const IN_A_DIVISION = 60;
const [entries = IN_ONE_TABLE, editions = 1] = (process.argv[2] ?? String(IN_ONE_TABLE)).split('x').map(Number);
const worked = entries > IN_ONE_TABLE ? IN_A_DIVISION : entries;
const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;

const variants = Array.from({ length: worked }, (_, i) => ({
  slug: `tern-${i + 10}`,
  maker: MAKERS[i % 2]!.slug,
  forceN: 60 + 1.7 * i,
  diameterMm: 0.16 + 0.002 * i,
  knotPercent: 45 + (i % 30),
  abrasionPercent: 55 + ((i * 7) % 35),
  ratedLbf: String(15 + i),
}));
const house = await createHouse();
const { t, editor } = house;
const releases = t.app.select(ReleasesModule);
let worker: ChildProcess | undefined;
try {
  await workEdition({ ...house, codes: await fitOutMore() }, '2026', { variants });
  await moveEdition(editor, '2026', 'closure');
  if (entries > worked) await multiplyVariants(t.databaseUrl, '2026', entries / worked, editor.accountId);
  if (editions > 1) await publishBefore(await editionsBefore(t.databaseUrl, '2026', editions - 1));
  await t.app.listen(0, '127.0.0.1');
  worker = startWorker({ t }, await t.app.getUrl(), 'error');
  const pid = worker.pid ?? 0;
  await until(async () => (await shown()) !== '');
  console.log(
    `${entries} entries, ${editions} editions; the worker holds ${memoryOf(pid).own.toFixed(0)} MB before\n\n| step | s | worker, MB | with what it started, MB |\n|---|---|---|---|`,
  );
  const before = await shown();
  await editor.call('post', '/v1/editions/2026/releases').send({ erratum: null }).expect(202);
  const isPublished = async () => (await editor.call('get', '/v1/editions/2026/releases/1')).body.state === 'published';
  const total =
    (await timed('from the order to published', isPublished, pid)) +
    (await timed('from published to live pages', async () => (await shown()) !== before, pid));
  console.log(`\nFrom the order to live pages: ${total.toFixed(1)} s`);
  if (entries <= 1000) await stepsAlone();
} finally {
  worker?.kill('SIGTERM');
  if (worker) await ended(worker);
  await t.close();
  await server.stop();
}

/** The variants of this edition beside those that the house has. */
async function fitOutMore(): Promise<Map<string, string>> {
  const codes = new Map(house.codes);
  for (const { slug, maker } of variants) {
    await editor
      .call('post', '/v1/catalogue/variants')
      .send({ slug, line: `${maker}-eight`, size: slug, colour: 'moss' })
      .expect(201);
    const spool = { source: 'bought', obtainedOn: '2026-01-05', place: 'A shop in the harbour', lot: null, lengthM: '150' };
    const { body } = await editor
      .call('post', '/v1/catalogue/spools')
      .send({ ...spool, variant: slug })
      .expect(201);
    codes.set(slug, (body as { blindCode: string }).blindCode);
  }
  return codes;
}

async function publishBefore(slugs: readonly string[]): Promise<void> {
  for (const slug of slugs) {
    await runSql(
      t.databaseUrl,
      `INSERT INTO "release" ("id", "edition_id", "revision", "state", "requested_by_id", "requested_at")
       SELECT gen_random_uuid(), "id", 1, 'building', $1::uuid, now() FROM "edition" WHERE "slug" = $2`,
      [editor.accountId, slug],
    );
    await releases.get(PublishRelease).run({ edition: slug, revision: 1 });
  }
}

/** Name of the folder that readers see; none before there is one. */
async function shown(): Promise<string> {
  return readlink(join(t.dataFolder, 'site/current')).catch(() => '');
}

async function until(isSo: () => Promise<boolean>, look: () => void = () => undefined): Promise<void> {
  while (!(await isSo())) {
    if (worker?.exitCode !== null) throw new Error('The worker ended; expected it to go on. Its log says why.');
    look();
    await pause(50);
  }
}

async function timed(what: string, isSo: () => Promise<boolean>, pid: number): Promise<number> {
  const [began, peak] = [performance.now(), { own: 0, all: 0 }];
  await until(isSo, () => {
    const { own, all } = memoryOf(pid);
    peak.own = Math.max(peak.own, own);
    peak.all = Math.max(peak.all, all);
  });
  const seconds = (performance.now() - began) / 1000;
  console.log(`| ${what} | ${seconds.toFixed(2)} | ${peak.own.toFixed(0)} | ${peak.all.toFixed(0)} |`);
  return seconds;
}

/** Two of its steps once more in this process, which is warm and has nothing else to do. */
async function stepsAlone(): Promise<void> {
  const began = performance.now();
  const inputs = await releases.get(GatherRelease).run('2026', 2, new Date(), null);
  const gathered = performance.now();
  let files = 0;
  for (const { parts } of computeInParts(inputs)) files += [...parts].length > 0 ? 1 : 0;
  console.log(
    `Alone: gathering ${((gathered - began) / 1000).toFixed(2)} s, computing ${files} files ${((performance.now() - gathered) / 1000).toFixed(2)} s`,
  );
}

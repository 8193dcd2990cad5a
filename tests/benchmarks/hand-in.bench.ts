/**
 * A hand-in file of many specimens, read, checked and stored over HTTP, beside COPY of the same rows into tables like them; and what the
 * server's memory does from a thousand rows to a hundred thousand.
 * npm run bench -- hand-in [rows …, 1000 10000 100000]
 */
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setUpBench } from '../support/bench.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import { listen, post } from '../support/races.js';
import { startTestServer } from '../support/test-server.js';

const sizes = process.argv.slice(2).map(Number);
const SPECIMENS = 20;
const TABLES = ['submission', 'submission_revision', 'submission_instrument', 'finding', 'specimen', 'reading'];

const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const b = await setUpBench();
const folder = await mkdtemp(join(tmpdir(), 'hand-in-'));
// The database server is another user.
await chmod(folder, 0o777);

/** A file of submissions of twenty specimens each, on one bench day after another. */
function fileOf(rows: number, seed: number): string {
  return csvFile(
    Array.from({ length: rows / SPECIMENS }, (_, submission) => {
      const benchDay = new Date(Date.UTC(2026, 0, 2) + (submission % 70) * 86_400_000).toISOString().slice(0, 10);
      const pulls = Array.from({ length: SPECIMENS }, (__, i) => ({
        number: i + 1,
        condition: 'untreated' as const,
        text: (90 + seed + submission * 0.0007 + ((i * 7) % 11) * 0.31).toFixed(4),
      }));
      const mark = submission % 2 === 0 ? b.spool : b.otherSpool;
      return pullRows({ edition: '2026', spool: mark, instrument: 'R1', benchDay }, 'straight-pull', pulls);
    }).flat(),
  );
}

/** Copies what the last file stored out to the server's disk, and times its way into empty tables like these. */
async function copySeconds(firstReference: string): Promise<number> {
  const own = `SELECT s."id" FROM "submission" s WHERE s."reference" >= '${firstReference}'`;
  const revisions = `SELECT r."id" FROM "submission_revision" r WHERE r."submission_id" IN (${own})`;
  const where: Record<string, string> = {
    submission: `"id" IN (${own})`,
    submission_revision: `"submission_id" IN (${own})`,
    submission_instrument: `"revision_id" IN (${revisions})`,
    finding: `"revision_id" IN (${revisions})`,
    specimen: `"revision_id" IN (${revisions})`,
    reading: `"specimen_id" IN (SELECT p."id" FROM "specimen" p WHERE p."revision_id" IN (${revisions}))`,
  };
  for (const table of TABLES) {
    await b.sql(`COPY (SELECT * FROM "${table}" WHERE ${where[table] ?? 'false'}) TO '${join(folder, table)}'`);
    await b.sql(`DROP TABLE IF EXISTS "copied_${table}"`);
    await b.sql(`CREATE TABLE "copied_${table}" (LIKE "${table}" INCLUDING ALL)`);
  }
  const began = performance.now();
  for (const table of TABLES) await b.sql(`COPY "copied_${table}" FROM '${join(folder, table)}'`);
  return (performance.now() - began) / 1000;
}

try {
  await b.sql(`SELECT 1`);
  const port = await listen(b);
  console.log(
    '| rows | handed in, s | rows a second | COPY, s | share of its rate | peak memory above the start, MB |\n|---|---|---|---|---|---|',
  );
  for (const [seed, rows] of (sizes.length > 0 ? sizes : [1000, 10_000, 100_000]).entries()) {
    const body = fileOf(rows, seed * 3);
    globalThis.gc?.();
    const start = process.memoryUsage().rss;
    let peak = start;
    const watch = setInterval(() => (peak = Math.max(peak, process.memoryUsage().rss)), 20);
    const began = performance.now();
    const answer = await post(port, { path: '/v1/submissions', token: b.tester.token, body, type: 'text/csv' });
    const seconds = (performance.now() - began) / 1000;
    clearInterval(watch);
    if (answer?.status !== 201)
      throw new Error(`${rows} rows were answered by ${answer?.status ?? 'nothing'}: ${answer?.text.slice(0, 500) ?? ''}`);
    const { submissions } = JSON.parse(answer.text) as { submissions: { reference: string }[] };
    const copied = await copySeconds(submissions[0]?.reference ?? '');
    const share = (100 * copied) / seconds;
    const megabytes = (peak - start) / 1e6;
    console.log(
      `| ${rows} | ${seconds.toFixed(2)} | ${(rows / seconds).toFixed(0)} | ${copied.toFixed(2)} | ${share.toFixed(0)} % | ${megabytes.toFixed(0)} |`,
    );
  }
} finally {
  await rm(folder, { recursive: true });
  await b.t.close();
  await server.stop();
}
process.exit();

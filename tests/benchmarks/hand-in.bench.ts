/**
 * A hand-in file of many specimens, read, checked and stored over HTTP, beside COPY of the same rows into the same tables; and what the
 * server's memory does from a thousand rows to a hundred thousand, and how often the database is asked for each submission.
 * npm run bench -- hand-in [rows …, 1000 10000 100000]
 */
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setUpBench } from '../support/bench.js';
import { countStatements } from '../support/count-statements.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import { listen, post } from '../support/races.js';
import { startTestServer } from '../support/test-server.js';

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;
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
  const lines = Array.from({ length: rows / SPECIMENS }, (_, submission) => {
    const benchDay = new Date(Date.UTC(2026, 0, 2) + (submission % 70) * 86_400_000).toISOString().slice(0, 10);
    const pulls = Array.from({ length: SPECIMENS }, (__, i) => ({
      number: i + 1,
      condition: 'untreated' as const,
      text: (90 + seed + submission * 0.0007 + ((i * 7) % 11) * 0.31).toFixed(4),
    }));
    const spool = submission % 2 === 0 ? b.spool : b.otherSpool;
    return pullRows({ edition: '2026', spool, instrument: 'R1', benchDay }, 'straight-pull', pulls).map(
      (row, i) => `${row},${submission},${(18 + (i % 7) * 0.3).toFixed(1)}`,
    );
  });
  return csvFile(lines.flat()).replace('\r\n', ',submission,time to break [s]\r\n');
}

/** Copies what the last file stored out to the server's disk, takes it out of the tables, and times its way back: same rows, tables, rules. */
async function copySeconds(firstReference: string): Promise<number> {
  const own = `SELECT s."id" FROM "submission" s WHERE s."id" >= (SELECT "id" FROM "submission" WHERE "reference" = '${firstReference}')`;
  const revisions = `SELECT r."id" FROM "submission_revision" r WHERE r."submission_id" IN (${own})`;
  const where: Record<string, string> = {
    submission: `"id" IN (${own})`,
    submission_revision: `"submission_id" IN (${own})`,
    submission_instrument: `"revision_id" IN (${revisions})`,
    finding: `"revision_id" IN (${revisions})`,
    specimen: `"revision_id" IN (${revisions})`,
    reading: `"specimen_id" IN (SELECT p."id" FROM "specimen" p WHERE p."revision_id" IN (${revisions}))`,
  };
  for (const table of TABLES) await b.sql(`COPY (SELECT * FROM "${table}" WHERE ${where[table] ?? 'false'}) TO '${join(folder, table)}'`);
  // What is on record is never deleted; for this the rules are off, and on again for the way back.
  const deletions = TABLES.toReversed().map((table) => `DELETE FROM "${table}" WHERE ${where[table] ?? 'false'};`);
  await b.sql(`SET session_replication_role = replica; ${deletions.join('')}`);
  for (const table of TABLES) await b.sql(`VACUUM (ANALYZE) "${table}"`);
  const began = performance.now();
  await b.sql(`BEGIN; ${TABLES.map((table) => `COPY "${table}" FROM '${join(folder, table)}';`).join('')} COMMIT;`);
  return (performance.now() - began) / 1000;
}

const port = await listen(b);

async function handIn(rows: number, seed: number): Promise<{ seconds: number; firstReference: string }> {
  const body = fileOf(rows, seed);
  const began = performance.now();
  const answer = await post(port, { path: '/v1/submissions', token: b.tester.token, body, type: 'text/csv' });
  const seconds = (performance.now() - began) / 1000;
  if (answer?.status !== 201)
    throw new Error(`${rows} rows were answered by ${answer?.status ?? 'nothing'}: ${answer?.text.slice(0, 500) ?? ''}`);
  const { submissions } = JSON.parse(answer.text) as { submissions: { reference: string }[] };
  return { seconds, firstReference: submissions[0]?.reference ?? '' };
}

/** Most memory that was in use while a file was handed in, above that before, and most that the process held; what waits for its collection counts in the latter alone. */
async function megabytes(rows: number, seed: number): Promise<{ inUse: number; held: number }> {
  const used = () => {
    collectGarbage();
    const { heapUsed, external } = process.memoryUsage();
    return (heapUsed + external) / 1e6;
  };
  const start = used();
  const watch = { inUse: 0, held: 0 };
  const timer = setInterval(() => {
    watch.held = Math.max(watch.held, process.memoryUsage().rss / 1e6);
    watch.inUse = Math.max(watch.inUse, used() - start);
  }, 100);
  await handIn(rows, seed);
  clearInterval(timer);
  return watch;
}

try {
  console.log(
    '| rows | handed in, s | rows a second | COPY, s | share of its rate | in use above the start, MB | held by the process, MB | statements a submission |\n|---|---|---|---|---|---|---|---|',
  );
  await handIn(10_000, 0);
  for (const [index, rows] of (sizes.length > 0 ? sizes : [1000, 10_000, 100_000]).entries()) {
    const pairs: { seconds: number; copied: number }[] = [];
    for (let time = 0; time < (rows > 20_000 ? 1 : 5); time++) {
      const { seconds, firstReference } = await handIn(rows, 20 * (index + 1) + 3 * time);
      pairs.push({ seconds, copied: await copySeconds(firstReference) });
    }
    // The pair in the middle by what it is asked for.
    const { seconds, copied } = pairs.toSorted((one, other) => one.copied / one.seconds - other.copied / other.seconds)[
      pairs.length >> 1
    ] ?? {
      seconds: NaN,
      copied: NaN,
    };
    const share = (100 * copied) / seconds;
    const { inUse, held } = await megabytes(rows, 100 + 3 * index);
    const statements = await countStatements(() => handIn(rows, 200 + 3 * index));
    console.log(
      `| ${rows} | ${seconds.toFixed(2)} | ${(rows / seconds).toFixed(0)} | ${copied.toFixed(2)} | ${share.toFixed(0)} % | ${inUse.toFixed(0)} | ${held.toFixed(0)} | ${((statements * SPECIMENS) / rows).toFixed(2)} |`,
    );
  }
} finally {
  await rm(folder, { recursive: true });
  await b.t.close();
  await server.stop();
}
process.exit();

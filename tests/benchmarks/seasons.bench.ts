/**
 * How the database goes about what is asked of it most, with twenty seasons on record: the plans of the planner itself, not of one told to spare itself
 * reading. A season is handed in over HTTP; the others are that one again, under other ids, past the rules of the record.
 * npm run bench -- seasons [seasons, 20]
 */
import { setUpBench } from '../support/bench.js';
import { SPOOL, VARIANT } from '../support/catalogue-fixtures.js';
import { csvFile, pullRows } from '../support/hand-in-csv.js';
import { plansOf, statementsOf } from '../support/plans.js';
import { startTestServer } from '../support/test-server.js';

const seasons = Number(process.argv[2] ?? 20);
const SPOOLS = 60;
const DAYS = 5;
const SPECIMENS = 10;
/** Who hand in the seasons that are over, one after another. */
const TESTERS = 10;

/** Tables of a season in the order of their keys: columns whose ids are other ones in another season, columns of text that stand once. */
const SEASON: readonly (readonly [table: string, ids: readonly string[], texts?: readonly string[]])[] = [
  ['edition', ['id'], ['slug']],
  ['edition_method', ['edition_id']],
  ['division', ['id', 'edition_id']],
  ['variant', ['id'], ['slug', 'size']],
  ['entry', ['id', 'edition_id', 'variant_id']],
  ['spool', ['id', 'variant_id'], ['blind_code']],
  ['submission', ['id', 'edition_id', 'spool_id'], ['reference', 'content_digest']],
  ['submission_revision', ['id', 'submission_id'], ['readings_digest']],
  ['submission_instrument', ['revision_id']],
  ['specimen', ['id', 'revision_id']],
  ['reading', ['id', 'specimen_id']],
  ['finding', ['id', 'revision_id']],
];
const GROWING = SEASON.slice(4).map(([table]) => table);

const server = await startTestServer();
process.env['TEST_SERVER_URL'] = server.url;
const b = await setUpBench();

async function handInSeason(): Promise<void> {
  const codes: string[] = [];
  for (let i = 0; i < SPOOLS; i++) {
    const spool = { ...SPOOL, variant: VARIANT.slug };
    codes.push(((await b.editor.call('post', '/v1/catalogue/spools').send(spool).expect(201)).body as { blindCode: string }).blindCode);
  }
  for (let day = 0; day < DAYS; day++) await handIn(fileOf(codes, day)).expect(201);
}

const handIn = (file: string) => b.tester.call('post', '/v1/submissions').set('Content-Type', 'text/csv').send(file);

function fileOf(codes: readonly string[], day: number): string {
  const benchDay = `2026-02-0${day + 1}`;
  return csvFile(
    codes.flatMap((spool, s) =>
      pullRows(
        { edition: '2026', spool, instrument: 'R1', benchDay },
        'straight-pull',
        Array.from({ length: SPECIMENS }, (_, i) => ({
          number: i + 1,
          condition: 'untreated' as const,
          text: (60 + day * 0.7 + s / 100 + ((i * 3) % 5) / 2).toFixed(2),
        })),
      ),
    ),
  );
}

/** The season again, as one that is over. */
async function repeat(times: number): Promise<void> {
  const accountIds: string[] = [];
  for (let i = 0; i < TESTERS; i++) accountIds.push((await b.t.caller(['tester'])).accountId);
  const testers = accountIds.map((id) => `'${id}'`).join();
  const copies = SEASON.map(([table, ids, texts = []]) => {
    const changed = [
      ...ids.map((column) => `'${column}', CASE WHEN t."${column}" IS NULL THEN NULL ELSE md5(t."${column}"::text || n)::uuid END`),
      ...texts.map((column) => `'${column}', t."${column}" || '-' || n`),
      ...(table === 'edition' ? [`'state', 'closed'`] : []),
      ...(table === 'submission' ? [`'state', 'accepted'`, `'tester_id', (ARRAY[${testers}]::uuid[])[1 + n % ${TESTERS}]`] : []),
    ];
    return `INSERT INTO "${table}" SELECT (jsonb_populate_record(NULL::"${table}", to_jsonb(t) || jsonb_build_object(${changed.join(', ')}))).*
      FROM "${table}" t, generate_series(1, ${times}) n;`;
  });
  const accepted = `UPDATE "submission" SET "state" = 'accepted' WHERE "bench_day" < '2026-02-04';`;
  await b.sql(`SET session_replication_role = replica; ${copies.join('\n')} ${accepted} SET session_replication_role = DEFAULT; ANALYZE`);
}

try {
  await handInSeason();
  await repeat(seasons - 1);
  const counts = await Promise.all(
    GROWING.map(async (table) => `${String((await b.sql(`SELECT count(*)::int AS n FROM "${table}"`))[0]?.['n'])} ${table}`),
  );
  console.log(`${seasons} seasons: ${counts.join(', ')}\n\n| asked | SELECTs | tables that grow, read through |\n|---|---|---|`);
  const [{ reference }] = (await b.reviewer.call('get', '/v1/submissions?state=submitted').expect(200)).body.items as [
    { reference: string },
  ];
  const asked: readonly (readonly [string, () => PromiseLike<unknown>])[] = [
    ['a hand-in of one spool', () => handIn(fileOf([b.spool], 7)).expect(201)],
    ["a tester's list", () => b.tester.call('get', '/v1/submissions').expect(200)],
    ['what waits for a reviewer', () => b.reviewer.call('get', '/v1/submissions?state=submitted').expect(200)],
    ['a submission', () => b.reviewer.call('get', `/v1/submissions/${reference}`).expect(200)],
    ["a tester's inbox", () => b.tester.call('get', '/v1/inbox').expect(200)],
    ["a reviewer's inbox", () => b.reviewer.call('get', '/v1/inbox').expect(200)],
    ["an editor's inbox", () => b.editor.call('get', '/v1/inbox').expect(200)],
    ['a page of spools', () => b.editor.call('get', '/v1/catalogue/spools').expect(200)],
    ['the board of one edition', () => b.editor.call('get', '/v1/editions/2026/board').expect(200)],
  ];
  for (const [what, work] of asked) {
    const plans = await plansOf(b.t.databaseUrl, await statementsOf(work), false);
    const through = plans.flatMap(({ readThrough }) => readThrough.filter((table) => GROWING.includes(table)));
    for (const { text, readThrough } of plans) if (readThrough.some((x) => GROWING.includes(x))) console.error(text, readThrough);
    console.log(`| ${what} | ${plans.length} | ${through.join(', ') || 'none'} |`);
  }
} finally {
  await b.t.close();
  await server.stop();
}
process.exit();

/** The right set of indexes: none twice, and none missing where a row is looked for by what it belongs to. */
import pg from 'pg';
import { createTestDatabase } from '../support/test-database.js';
import { runSql } from '../support/run-sql.js';
import type { TestDatabase } from '../support/test-database.js';

let database: TestDatabase;
beforeAll(async () => {
  database = await createTestDatabase();
});
afterAll(() => database.drop());

const sql = (text: string) => runSql(database.url, text);

/** Indexes of the same columns of one table over all of its rows. */
const TWICE = `
  SELECT indrelid::regclass::text AS "table", array_agg(indexrelid::regclass::text ORDER BY 1) AS indexes
  FROM pg_index JOIN pg_class ON pg_class.oid = indrelid
  WHERE relnamespace = 'public'::regnamespace AND indpred IS NULL AND indexprs IS NULL
  GROUP BY indrelid, indkey::text HAVING count(*) > 1`;

/** Foreign keys of whose columns no index over all rows, or all that are not null, begins. */
const WITHOUT_LEADING = `
  SELECT format('%s.%s', conrelid::regclass, (SELECT string_agg(attname, ',' ORDER BY attnum) FROM pg_attribute WHERE attrelid = conrelid AND attnum = ANY (conkey))) AS key
  FROM pg_constraint c
  WHERE contype = 'f' AND connamespace = 'public'::regnamespace AND NOT EXISTS (
    SELECT 1 FROM pg_index i
    WHERE i.indrelid = c.conrelid AND i.indpred IS NULL AND (i.indkey::int2[])[0:cardinality(c.conkey) - 1] @> c.conkey)
  ORDER BY 1`;

test('no two indexes of a table have the same columns', async () => {
  expect(await sql(TWICE)).toEqual([]);
  await sql('CREATE INDEX "again" ON "maker" ("slug")');
  expect(await sql(TWICE)).toMatchObject([{ table: 'maker' }]);
  await sql('DROP INDEX "again"');
});

test('every foreign key leads an index', async () => {
  expect((await sql(WITHOUT_LEADING)).map(({ key }) => key)).toEqual([]);
  await sql('DROP INDEX "spool_variant_id_idx"');
  expect(await sql(WITHOUT_LEADING)).toEqual([{ key: 'spool.variant_id' }]);
});

test("a page of a tester's list is read in the order of an index, without the rest of what the tester handed in", async () => {
  const client = new pg.Client({ connectionString: database.url });
  await client.connect();
  try {
    await client.query('SET enable_seqscan = off; SET enable_bitmapscan = off');
    const { rows } = await client.query<{ 'QUERY PLAN': string }>(
      `EXPLAIN SELECT * FROM "submission" WHERE "tester_id" = '00000000-0000-7000-8000-000000000000' ORDER BY "id" DESC LIMIT 51`,
    );
    const plan = rows.map((row) => row['QUERY PLAN']).join('\n');
    expect(plan).not.toContain('Sort');
    expect(plan).toContain('Index Cond: (tester_id = ');
  } finally {
    await client.end();
  }
});

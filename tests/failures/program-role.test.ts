/** What server and worker may do in the database, and what they may not: whoever breaks into them cannot get around a rule of the record. */
import { readConfig } from '../../api/config.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { applyMigrations } from '../../api/platform/migrations/apply-migrations.js';
import { grantToProgram } from '../../api/platform/migrations/grant-program.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { TestApplication } from '../support/test-application.js';
import { createTestDatabase } from '../support/test-database.js';
import { programUrlOf } from '../support/test-server.js';

let t: TestApplication;
beforeAll(async () => {
  t = await createTestApplication();
});
afterAll(() => t.close());

const asProgram = (text: string) => runSql(programUrlOf(t.databaseUrl), text);

test('it is the role that the application under test has', async () => {
  const rows = await runSql(
    t.databaseUrl,
    'SELECT DISTINCT usename FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()',
  );
  expect(rows).toEqual([{ usename: 'program_of_tests' }]);
});

test.each([
  ['switch a trigger off', 'ALTER TABLE reading DISABLE TRIGGER USER', /must be owner/],
  ['switch all triggers off for itself', 'SET session_replication_role = replica', /permission denied/],
  ['empty a table', 'TRUNCATE reading', /permission denied/],
  ['drop a table', 'DROP TABLE reading', /must be owner/],
  ['drop a constraint', 'ALTER TABLE claim DROP CONSTRAINT claim_pkey', /must be owner/],
  [
    'replace the function of a rule',
    `CREATE OR REPLACE FUNCTION forbid_change() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN RETURN NEW; END'`,
    /permission denied|must be owner/,
  ],
  ['make a table where a rule would find it first', 'CREATE TABLE public.account_of_mine (id int)', /permission denied/],
  ['forge the history of the schema', `DELETE FROM _prisma_migrations`, /permission denied/],
  ['make itself another role', 'CREATE ROLE mine SUPERUSER', /permission denied/],
  ['become the owner', 'SET ROLE fairpull', /permission denied/],
  ['read files of the machine', `SELECT pg_read_file('/etc/passwd')`, /permission denied/],
  ['start programs', `COPY maker TO PROGRAM 'cat'`, /permission denied|must be superuser/],
])('it cannot %s', async (_, text, refusal) => {
  await expect(asProgram(text)).rejects.toThrow(refusal);
});

test('a rule of the record stands against it', async () => {
  await t.caller(['editor']);
  await expect(asProgram(`UPDATE audit_event SET action = 'nothing'`)).rejects.toThrow(/record_is_append_only/);
});

test('a table that a later migration makes is its own to fill, after the migration and not before', async () => {
  const database = await createTestDatabase();
  const fill = () => runSql(programUrlOf(database.url), 'INSERT INTO later VALUES (1)');
  await runSql(database.url, 'CREATE TABLE later (id int)');
  await expect(fill()).rejects.toThrow(/permission denied/);
  await applyMigrations(database.url);
  await grantToProgram(database.url, programUrlOf(database.url));
  await fill();
  await database.drop();
});

test('a queue that the owner made becomes its own', async () => {
  const database = await createTestDatabase();
  await runSql(
    database.url,
    `DROP SCHEMA pgboss CASCADE; CREATE SCHEMA pgboss; CREATE TYPE pgboss.kind AS ENUM ('a'); CREATE TABLE pgboss.job (id int, kind pgboss.kind);
     CREATE FUNCTION pgboss.make() RETURNS int LANGUAGE sql AS 'SELECT 1'`,
  );
  await grantToProgram(database.url, programUrlOf(database.url));
  await runSql(
    programUrlOf(database.url),
    `ALTER TABLE pgboss.job ADD COLUMN more int; DROP FUNCTION pgboss.make(); ALTER TYPE pgboss.kind ADD VALUE 'b'`,
  );
  await database.drop();
});

test('and so does what a worker makes that was first started as the owner', async () => {
  const database = await createTestDatabase();
  const [queue, other] = [{ name: 'one', policy: 'short' } as const, { name: 'other', policy: 'short' } as const];
  const jobsOf = (url: string) => new Jobs(readConfig({ DATABASE_URL: url, DATA_FOLDER: t.dataFolder, LOG_LEVEL: 'silent' }));
  const [ofOwner, ofProgram] = [jobsOf(database.url), jobsOf(programUrlOf(database.url))];
  try {
    await ofOwner.order(null, queue, {});
    await ofProgram.order(null, other, {});
    expect((await ofProgram.open()).map(({ queue: name }) => name).sort()).toEqual(['one', 'other']);
  } finally {
    await Promise.all([ofOwner.stop(), ofProgram.stop()]);
    await database.drop();
  }
});

test('many that give it its rights at once do not disturb each other', async () => {
  const database = await createTestDatabase();
  await Promise.all(Array.from({ length: 8 }, () => grantToProgram(database.url, programUrlOf(database.url))));
  await database.drop();
});

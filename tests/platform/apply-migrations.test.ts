import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CLIENT, generateClient, sqlFromMigrationsToModels, sqlToModels } from '../../.config/models.js';
import { applyMigrations, pendingMigrations } from '../../api/platform/migrations/apply-migrations.js';
import { runSql } from '../support/run-sql.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

let database: TestDatabase;
let folder: string;

beforeEach(async () => {
  database = await createTestDatabase();
  await query('DROP SCHEMA public CASCADE; CREATE SCHEMA public');
  folder = await mkdtemp(join(tmpdir(), 'fairpull-migrations-'));
});

afterEach(async () => {
  await database.drop();
  await rm(folder, { recursive: true });
});

const query = (sql: string) => runSql(database.url, sql);

async function write(name: string, sql: string): Promise<void> {
  await mkdir(join(folder, name), { recursive: true });
  await writeFile(join(folder, name, 'migration.sql'), sql);
}

test('applies what is missing, in the order of the names, and nothing twice', async () => {
  await write('002_second', 'ALTER TABLE spool ADD COLUMN length_m numeric;');
  await write('001_first', 'CREATE TABLE spool (id int);');
  expect(await applyMigrations(database.url, folder)).toEqual(['001_first', '002_second']);
  expect(await applyMigrations(database.url, folder)).toEqual([]);
});

test('a server that is too old is refused by its name, before anything is done', async () => {
  await query(`CREATE FUNCTION current_setting(name text) RETURNS text LANGUAGE sql
    AS $$ SELECT CASE name WHEN 'server_version' THEN '14.18' WHEN 'server_version_num' THEN '140018' END $$`);
  const name = new URL(database.url).pathname.slice(1);
  await query(`ALTER DATABASE ${name} SET search_path = public, pg_catalog`);
  await write('001_first', 'CREATE TABLE spool (id int);');
  await expect(applyMigrations(database.url, folder)).rejects.toThrow('The server is PostgreSQL 14.18; this program needs 15 or newer.');
  expect(await query(`SELECT to_regclass('spool') AS spool`)).toEqual([{ spool: null }]);
});

test('a failing migration leaves nothing behind, and the message gives its line', async () => {
  await write('001_first', 'CREATE TABLE spool (id int);\nSELECT no_such_column FROM spool;');
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/001_first failed at line 2 and was undone: .*no_such_column/);
  expect(await query(`SELECT to_regclass('spool') AS spool`)).toEqual([{ spool: null }]);
  expect(await query('SELECT * FROM _prisma_migrations')).toEqual([]);
});

test('refuses a migration that was changed after it was applied', async () => {
  await write('001_first', 'CREATE TABLE spool (id int);');
  await applyMigrations(database.url, folder);
  await write('001_first', 'CREATE TABLE spool (id bigint);');
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/001_first was changed after it was applied/);
});

test('line ends of another operating system are no change', async () => {
  await write('001_first', 'CREATE TABLE spool\n(id int);');
  await applyMigrations(database.url, folder);
  await write('001_first', 'CREATE TABLE spool\r\n(id int);');
  expect(await applyMigrations(database.url, folder)).toEqual([]);
});

test('refuses a database that is newer than the program', async () => {
  await write('001_first', 'CREATE TABLE spool (id int);');
  await applyMigrations(database.url, folder);
  await rm(join(folder, '001_first'), { recursive: true });
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/database is newer/);
});

test('refuses a migration that sorts before one already applied', async () => {
  await write('002_second', 'CREATE TABLE spool (id int);');
  await applyMigrations(database.url, folder);
  await write('001_first', 'CREATE TABLE reading (id int);');
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/001_first is not applied, but 002_second/);
});

test('refuses to go on after a migration that was begun and never finished', async () => {
  await write('001_first', 'CREATE TABLE spool (id int);');
  await applyMigrations(database.url, folder);
  await query('UPDATE _prisma_migrations SET finished_at = NULL');
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/001_first was begun .* never finished/);
});

test('two programs that start at once apply each migration once', async () => {
  await write('001_first', 'SELECT pg_sleep(0.2); CREATE TABLE spool (id int);');
  const [one, other] = await Promise.all([applyMigrations(database.url, folder), applyMigrations(database.url, folder)]);
  expect([...one, ...other]).toEqual(['001_first']);
});

test('refuses a folder without its migration.sql', async () => {
  await mkdir(join(folder, '001_first'));
  await expect(applyMigrations(database.url, folder)).rejects.toThrow(/001_first has no migration.sql/);
});

test('what is pending is told without a change', async () => {
  await write('001_first', 'CREATE TABLE spool (id int)');
  expect(await pendingMigrations(database.url, folder)).toEqual(['001_first']);
  expect(await query(`SELECT to_regclass('_prisma_migrations') AS found`)).toEqual([{ found: null }]);
  await applyMigrations(database.url, folder);
  await write('002_second', 'CREATE TABLE line (id int)');
  expect(await pendingMigrations(database.url, folder)).toEqual(['002_second']);
});

test('the tables of the migrations are those of the models', async () => {
  expect(await sqlFromMigrationsToModels(database.url)).toBe('');
  await applyMigrations(database.url);
  await query('DROP INDEX "finding_revision_id_idx"; ALTER TABLE "maker" ADD COLUMN "odd" text');
  const difference = await sqlToModels(database.url);
  expect(difference).toMatch(/DROP COLUMN "odd"/);
  expect(difference).toMatch(/CREATE INDEX "finding_revision_id_idx"/);
});

test('the generated client is the one that belongs to the models, and nobody edited it', async () => {
  const made = join(folder, 'client');
  await generateClient(made);
  const read = async (root: string) => {
    const names = (await readdir(root, { recursive: true })).filter((name) => name.endsWith('.ts')).sort();
    return Promise.all(names.map(async (name) => [name, await readFile(join(root, name), 'utf8')]));
  };
  const [committed, fresh] = [Object.fromEntries(await read(CLIENT)), Object.fromEntries(await read(made))] as Record<string, string>[];
  expect(Object.keys(committed!)).toEqual(Object.keys(fresh!));
  // Names alone: the files are long.
  expect(Object.keys(fresh!).filter((name) => fresh![name] !== committed![name])).toEqual([]);
});

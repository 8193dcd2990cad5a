import { execFile } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import pg from 'pg';
import { applyMigrations } from '../../api/platform/migrations/apply-migrations.js';
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

async function query(sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: database.url });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(sql)).rows;
  } finally {
    await client.end();
  }
}

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

describe("Prisma's own command line", () => {
  const migrate = (...args: string[]) =>
    promisify(execFile)(process.execPath, ['node_modules/prisma/build/index.js', 'migrate', ...args, '--config', '.config/prisma.ts'], {
      env: {
        ...process.env,
        DATABASE_URL: database.url,
        PRISMA_SCHEMA_ENGINE_BINARY: resolve('.config/schema-engine.mjs'),
        PATH: `${resolve('node_modules/.bin')}:${process.env['PATH'] ?? ''}`,
        CHECKPOINT_DISABLE: '1',
      },
    }).then(
      ({ stdout, stderr }) => ({ exitCode: 0, output: stdout + stderr }),
      (error: unknown) => {
        const { code, stdout, stderr } = error as { code: number; stdout: string; stderr: string };
        return { exitCode: code, output: stdout + stderr };
      },
    );

  test('sees pending migrations before, and a database that is up to date after', async () => {
    const before = await migrate('status');
    expect(before.exitCode).toBe(1);
    expect(before.output).toMatch(/have not yet been applied/);
    await applyMigrations(database.url);
    const after = await migrate('status');
    expect(after.output).toMatch(/Database schema is up to date/);
    expect(after.exitCode).toBe(0);
  }, 30_000);

  test('applies the same history, with the same rows', async () => {
    const deployed = await migrate('deploy');
    expect(deployed.output).toMatch(/All migrations have been successfully applied/);
    expect(await applyMigrations(database.url)).toEqual([]);
  }, 30_000);

  test('the tables of the migrations are those of the schema', async () => {
    const difference = await migrate('diff', '--from-migrations', 'prisma/migrations', '--to-schema', 'prisma', '--exit-code');
    expect(difference).toEqual({ exitCode: 0, output: expect.stringMatching(/No difference detected/) as string });
    const removal = await migrate('diff', '--from-migrations', 'prisma/migrations', '--to-empty', '--script', '--exit-code');
    expect(removal).toEqual({ exitCode: 2, output: expect.stringMatching(/DROP TABLE "public"."account"/) as string });
  }, 30_000);
});

import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text as readText } from 'node:stream/consumers';
import { loadWithMark, readContents, removeHalfDemo, wasDemoCutOff } from '../../api/first-run.js';
import { inventDemo } from '../../prisma/seed/demo.js';
import { keptWinters } from '../../prisma/seed/kept/lay-winter.js';
import { runSql } from '../support/run-sql.js';
import { createTestDatabase } from '../support/test-database.js';
import type { TestDatabase } from '../support/test-database.js';

let database: TestDatabase;
let folder: string;

beforeEach(async () => {
  database = await createTestDatabase();
  folder = await mkdtemp(join(tmpdir(), 'fairpull-first-run-'));
});

afterEach(async () => {
  await database.drop();
  await rm(folder, { recursive: true });
});

const query = (sql: string) => runSql(database.url, sql);

const addAccount = (email: string) =>
  query(
    `INSERT INTO account (id, email, display_name, name_as_seen, password_hash, roles, created_at) VALUES (gen_random_uuid(), '${email}', 'A', 'a', 'x', '{tester}', now())`,
  );

/** The mark of a load whose process is gone; no system gives out this process id (Linux ends at 4 194 304). */
const markAsLeftByDeadProcess = () => writeFile(join(folder, 'demo-loading'), '999999999');

test('a fresh database is unused; one account ends that', async () => {
  expect(await readContents(database.url, ['demo@example.org'])).toEqual({ isUnused: true, isDemo: false });
  await addAccount('someone@example.org');
  expect(await readContents(database.url, ['demo@example.org'])).toEqual({ isUnused: false, isDemo: false });
});

test('a database with an account of the demo is the demo', async () => {
  await addAccount('demo@example.org');
  expect(await readContents(database.url, ['demo@example.org'])).toEqual({ isUnused: false, isDemo: true });
});

test('a load that fails keeps its mark, one that succeeds takes it away', async () => {
  await expect(loadWithMark(folder, () => Promise.reject(new Error('cut off')))).rejects.toThrow('cut off');
  await markAsLeftByDeadProcess();
  expect(wasDemoCutOff(folder)).toBe(true);
  await loadWithMark(folder, () => Promise.resolve());
  expect(wasDemoCutOff(folder)).toBe(false);
});

test('a load that another living start is in the middle of was not cut off', async () => {
  await loadWithMark(folder, () => {
    expect(wasDemoCutOff(folder)).toBe(false);
    return Promise.resolve();
  });
});

test('half a demo is removed with its files and its mark; what else is in the folder stays', async () => {
  await addAccount('demo@example.org');
  await mkdir(join(folder, 'files'));
  await writeFile(join(folder, 'files', 'bundle.json'), '{}');
  await mkdir(join(folder, 'keys'));
  await writeFile(join(folder, 'keys/signing-key.pem'), 'key');
  await expect(loadWithMark(folder, () => Promise.reject(new Error('cut off')))).rejects.toThrow();
  await removeHalfDemo(database.url, folder);
  expect(await query(`SELECT to_regclass('account') AS account`)).toEqual([{ account: null }]);
  await expect(stat(join(folder, 'files'))).rejects.toThrow(/ENOENT/);
  expect((await stat(join(folder, 'keys/signing-key.pem'))).isFile()).toBe(true);
  expect(wasDemoCutOff(folder)).toBe(false);
});

describe('the winters that are kept', () => {
  test('are laid where all of them fit the schema, and the owner of the database is its superuser', async () => {
    const seasons = inventDemo().seasons.map(({ season }) => season.slug);
    expect((await keptWinters(database.url, seasons))?.size).toBe(4);
    expect(await keptWinters(database.url, [...seasons, '2031'])).toBeNull();
    expect(await keptWinters(database.programUrl, seasons)).toBeNull();
    await query(
      `UPDATE "_prisma_migrations" SET checksum = reverse(checksum) WHERE migration_name = (SELECT max(migration_name) FROM "_prisma_migrations")`,
    );
    expect(await keptWinters(database.url, seasons)).toBeNull();
  });

  test('are played elsewhere, which is said', async () => {
    const env = { PATH: process.env['PATH'], DATABASE_URL: database.programUrl, DATA_FOLDER: folder, LOG_LEVEL: 'silent' };
    const loader = spawn(process.execPath, ['--import', './.config/load-typescript.mjs', 'prisma/seed/load-demo.ts'], { env });
    const said = readText(loader.stdout);
    const ended = once(loader, 'exit');
    const played = () => query('SELECT 1 FROM maker LIMIT 1');
    while (loader.exitCode === null && (await played()).length === 0) await new Promise((resume) => setTimeout(resume, 100));
    loader.kill('SIGKILL');
    await ended;
    expect(await said).toMatch(/^ {2}The winters are played, spool by spool, .* does not fit this database/);
    expect(await played()).toHaveLength(1);
  });
});

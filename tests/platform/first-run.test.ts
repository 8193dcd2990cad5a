import { mkdir, mkdtemp, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { loadWithMark, readContents, removeHalfDemo, wasDemoCutOff } from '../../api/first-run.js';
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

async function query(sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: database.url });
  await client.connect();
  try {
    return (await client.query<Record<string, unknown>>(sql)).rows;
  } finally {
    await client.end();
  }
}

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

import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chmod, chown, copyFile, mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';
import { readConfig } from '../../api/config.js';
import { Database } from '../../api/platform/database/database.js';
import { startEmbeddedPostgres } from '../../api/platform/embedded-postgres/start-embedded-postgres.js';
import { withDatabase } from '../../api/platform/embedded-postgres/with-database.js';
import { Jobs } from '../../api/platform/jobs/jobs.js';
import { makeDataFolder, removeDataFolder, serverProcessId, waitUntil } from './data-folder.js';

let folder: string;

beforeEach(async () => {
  folder = await makeDataFolder();
});

afterEach(() => removeDataFolder(folder));

async function query(url: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return (await client.query<Record<string, unknown>>(sql)).rows;
  } finally {
    await client.end().catch(() => undefined);
  }
}

/** The same, in a process that can be killed. */
async function startElsewhere(): Promise<{ child: ChildProcess; url: string }> {
  const args = ['--import', './.config/load-typescript.mjs', 'tests/failures/keep-server-up.ts', folder];
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  const [url] = (await once(child.stdout, 'data')) as [Buffer];
  return { child, url: url.toString().trim() };
}

async function endOf(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  const ended = once(child, 'exit');
  child.kill(signal);
  await ended;
}

test('a command that looks for a house makes none where there is none, and says what to name', async () => {
  await expect(withDatabase({ DATA_FOLDER: folder }, () => Promise.resolve())).rejects.toThrow(
    `There is no house in ${folder}: name its folder in DATA_FOLDER, or its server in DATABASE_URL.`,
  );
  await expect(stat(join(folder, 'postgres', 'cluster'))).rejects.toThrow(/ENOENT/);
});

test('listens on the loopback address alone, asks for the password, and keeps it from others', async () => {
  const server = await startEmbeddedPostgres(folder);
  const [settings] = await query(
    server.url,
    `SELECT current_setting('listen_addresses') AS listens, current_setting('data_checksums') AS checksums,
            current_setting('server_encoding') AS encoding, current_setting('timezone') AS zone,
            current_setting('wal_segment_size') AS piece, current_setting('min_wal_size') AS least, current_setting('max_wal_size') AS most,
            (SELECT datcollate FROM pg_database WHERE datname = current_database()) AS locale`,
  );
  const ofTheLog = { piece: '4MB', least: '8MB', most: '16MB' };
  expect(settings).toEqual({ listens: '127.0.0.1', checksums: 'on', encoding: 'UTF8', zone: 'UTC', locale: 'C', ...ofTheLog });
  const withoutPassword = new URL(server.url);
  withoutPassword.password = 'guess';
  await expect(query(withoutPassword.href, 'SELECT 1')).rejects.toThrow(/password authentication failed/);
  expect((await stat(join(folder, 'postgres', 'password'))).mode & 0o777).toBe(0o600);
  expect((await stat(join(folder, 'postgres', 'cluster'))).mode & 0o077).toBe(0);
  await server.stop();
  expect(await serverProcessId(folder)).toBeUndefined();
});

test('a process that was killed leaves its server to the next start, with every row', async () => {
  const { child, url } = await startElsewhere();
  await query(url, 'CREATE TABLE kept AS SELECT 42 AS answer');
  await endOf(child, 'SIGKILL');
  const server = await startEmbeddedPostgres(folder);
  expect(server.wasRunning).toBe(true);
  expect(await query(server.url, 'SELECT answer FROM kept')).toEqual([{ answer: 42 }]);
  await server.stop();
  expect(await serverProcessId(folder)).toBeUndefined();
});

test('a server that was killed itself recovers what was committed', async () => {
  const first = await startEmbeddedPostgres(folder);
  await query(first.url, 'CREATE TABLE kept AS SELECT 42 AS answer');
  const id = await serverProcessId(folder);
  process.kill(id!, 'SIGKILL');
  await waitUntil('the killed server is gone', async () => (await serverProcessId(folder)) === undefined);
  const second = await startEmbeddedPostgres(folder);
  expect(await query(second.url, 'SELECT answer FROM kept')).toEqual([{ answer: 42 }]);
  await first.stop();
  await second.stop();
});

test('two starts share one server; the first to leave leaves it to the other', async () => {
  const { child } = await startElsewhere();
  const server = await startEmbeddedPostgres(folder);
  const id = await serverProcessId(folder);
  await endOf(child, 'SIGTERM');
  expect(await query(server.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
  expect(await serverProcessId(folder)).toBe(id);
  await server.stop();
  expect(await serverProcessId(folder)).toBeUndefined();
});

test('two starts at once on an empty folder make one cluster', async () => {
  const [one, other] = await Promise.all([startEmbeddedPostgres(folder), startEmbeddedPostgres(folder)]);
  expect(one.url).toBe(other.url);
  await Promise.all([one.stop(), other.stop()]);
  expect(await serverProcessId(folder)).toBeUndefined();
});

test('a half-made data folder is made again', async () => {
  await mkdir(join(folder, 'postgres', 'cluster.making', 'base'), { recursive: true });
  await writeFile(join(folder, 'postgres', 'cluster.making', 'PG_VERSION'), '18\n');
  const server = await startEmbeddedPostgres(folder);
  expect(await query(server.url, 'SELECT 1 AS one')).toEqual([{ one: 1 }]);
  await server.stop();
});

test('the lock of a dead process is taken over', async () => {
  const { child } = await startElsewhere();
  const deadId = child.pid ?? 0;
  await endOf(child, 'SIGTERM');
  await writeFile(join(folder, 'postgres', 'lock'), String(deadId));
  const server = await startEmbeddedPostgres(folder);
  await server.stop();
});

test('a cluster of another major version is left alone', async () => {
  const server = await startEmbeddedPostgres(folder);
  await server.stop();
  const version = join(folder, 'postgres', 'cluster', 'PG_VERSION');
  await writeFile(version, '15\n');
  await expect(startEmbeddedPostgres(folder)).rejects.toThrow(/made by PostgreSQL 15; the installed one is 18/);
  expect(await readFile(version, 'utf8')).toBe('15\n');
});

test('over TLS it is encrypted and checked by whom the README says, by pool, queue and commands alike', async () => {
  const first = await startEmbeddedPostgres(folder);
  await first.stop();
  const cluster = join(folder, 'postgres', 'cluster');
  const { uid, gid } = await stat(cluster);
  // Signed by itself, for 127.0.0.1, for a hundred years.
  for (const name of ['server.crt', 'server.key']) {
    await copyFile(join('tests/failures/fixtures', name), join(cluster, name));
    await chown(join(cluster, name), uid, gid);
    await chmod(join(cluster, name), 0o600);
  }
  const server = await startEmbeddedPostgres(folder, { settings: { ssl: 'on' } });
  const isEncrypted = `SELECT bool_and(ssl) AS ssl FROM pg_stat_ssl JOIN pg_stat_activity USING (pid) WHERE client_addr IS NOT NULL AND application_name NOT LIKE '%keeps the server up'`;
  const checked = `${server.url}?sslmode=verify-full&sslrootcert=tests/failures/fixtures/server.crt`;
  const unchecked = `${server.url}?sslmode=no-verify`;
  try {
    await query(server.url, 'CREATE SCHEMA pgboss');
    const config = readConfig({ DATABASE_URL: checked });
    const [database, jobs] = [new Database(config), new Jobs(config)];
    await jobs.open();
    await expect(database.client.$queryRawUnsafe(isEncrypted)).resolves.toEqual([{ ssl: true }]);
    await Promise.all([database.close(), jobs.stop()]);
    for (const url of [checked, unchecked]) expect(await query(url, isEncrypted)).toEqual([{ ssl: true }]);
    await expect(query(`${server.url}?sslmode=verify-full`, 'SELECT 1')).rejects.toThrow('self-signed certificate');
    const told = (await readFile('README.md', 'utf8')).matchAll(/sslmode=([a-z-]+)(&sslrootcert=)?/g);
    expect([...told].map(([, mode, root]) => [mode, root])).toEqual([
      ['verify-full', '&sslrootcert='],
      ['no-verify', undefined],
    ]);
  } finally {
    await server.stop();
  }
});

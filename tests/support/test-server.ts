import { chmod, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { isAlive } from '../../api/platform/embedded-postgres/folder-lock.js';
import { startEmbeddedPostgres } from '../../api/platform/embedded-postgres/start-embedded-postgres.js';
import { grantToProgram } from '../../api/platform/migrations/grant-program.js';
import { applyMigrations } from '../../api/platform/migrations/apply-migrations.js';

/** Database that every test's own is copied from. */
export const TEMPLATE = 'fairpull_template';
const PREFIX = 'fairpull-tests-';
/** The data die with the run, so nothing needs to reach the disk. */
const FAST = { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '200' };
/** A statement over a socket of the machine takes half of what it takes over the loopback. */
const BY_SOCKET = { unix_socket_directories: tmpdir() };

/** The PostgreSQL server of one test run, in a temporary folder of its own. */
export interface TestServer {
  readonly url: string;
  stop(): Promise<void>;
}

/** Starts a server and makes the migrated template database. */
export async function startTestServer(): Promise<TestServer> {
  await removeLeftovers();
  const folder = await mkdtemp(join(tmpdir(), PREFIX));
  await chmod(folder, 0o711);
  await writeFile(join(folder, 'owner'), String(process.pid));
  const server = await startEmbeddedPostgres(folder, { settings: { ...FAST, ...BY_SOCKET } });
  const address = new URL(server.url);
  address.searchParams.set('host', BY_SOCKET.unix_socket_directories);
  const url = address.href;
  await createTemplate(url);
  return {
    url,
    async stop() {
      await server.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** Address for the role that server and worker have; the tests' own meddling needs the owner's. */
export function programUrlOf(ownerUrl: string): string {
  const address = new URL(ownerUrl);
  address.username = 'program_of_tests';
  address.password = 'of-tests';
  return address.href;
}

async function createTemplate(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query(`CREATE DATABASE ${TEMPLATE}`);
  await client.end();
  const template = new URL(url);
  template.pathname = `/${TEMPLATE}`;
  await applyMigrations(template.href);
  await grantToProgram(template.href, programUrlOf(template.href));
}

/** A run that was killed leaves its server behind; the next one ends it and takes the folder away. */
async function removeLeftovers(): Promise<void> {
  const names = (await readdir(tmpdir())).filter((name) => name.startsWith(PREFIX));
  for (const folder of names.map((name) => join(tmpdir(), name))) {
    const owner = Number(await readFile(join(folder, 'owner'), 'utf8').catch(() => process.pid));
    if (isAlive(owner)) continue;
    const leftover = await startEmbeddedPostgres(folder).catch(() => undefined);
    await leftover?.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

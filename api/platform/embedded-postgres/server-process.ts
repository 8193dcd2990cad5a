import { existsSync } from 'node:fs';
import { readFile, realpath, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { findFreePort } from './free-port.js';
import { runServerProgram } from './run-server-program.js';
import type { ServerHome } from './server-home.js';

/** Settings of the server, name to value, e.g. { fsync: 'off' }. */
export type ServerSettings = Readonly<Record<string, string>>;

const LOOPBACK_ONLY: ServerSettings = { listen_addresses: '127.0.0.1', unix_socket_directories: '', timezone: 'UTC', log_timezone: 'UTC' };
/** Another program may take the free port between our look and the server's start. */
const ATTEMPTS = 3;
/** Line of postmaster.pid that carries the port, counted from 0 (PostgreSQL's src/include/utils/pidfile.h). */
const PORT_LINE = 3;
/** Line of the folder that it runs on. */
const FOLDER_LINE = 1;

/** The port of a server that already runs on this cluster, left by a killed process or shared with a living one. */
export async function findRunningServer(home: ServerHome): Promise<number | undefined> {
  await forgetOtherServer(home);
  const { exitCode } = await runServerProgram(home, 'pg_ctl', ['-D', home.clusterFolder, 'status']);
  if (exitCode !== 0) return undefined;
  const lines = (await readFile(join(home.clusterFolder, 'postmaster.pid'), 'utf8').catch(() => '')).split('\n');
  const port = Number(lines[PORT_LINE]);
  return Number.isInteger(port) && port > 0 ? port : undefined;
}

/** A folder that was copied while its server ran names that server; it is not ours. */
async function forgetOtherServer({ clusterFolder }: ServerHome): Promise<void> {
  const file = join(clusterFolder, 'postmaster.pid');
  const folder = (await readFile(file, 'utf8').catch(() => '')).split('\n')[FOLDER_LINE];
  if (folder === undefined || folder === '') return;
  const isOurs = (await realpath(folder).catch(() => folder)) === (await realpath(clusterFolder));
  if (!isOurs) await rm(file, { force: true });
}

/**
 * Starts the server on a free port of 127.0.0.1 and waits until it accepts connections.
 * @throws Error with the end of the server's own log when it does not come up
 */
export async function startServer(home: ServerHome, settings: ServerSettings): Promise<number> {
  if (existsSync(home.logFile)) await rename(home.logFile, `${home.logFile}.previous`);
  let output = '';
  for (let attempt = 1; attempt <= ATTEMPTS; attempt += 1) {
    const port = await findFreePort();
    const wishes = Object.entries({ ...LOOPBACK_ONLY, ...settings, port: String(port) }).map(([name, value]) => `-c ${name}=${value}`);
    const args = ['-D', home.clusterFolder, '-l', home.logFile, '-w', '-t', '60', '-o', wishes.join(' '), 'start'];
    const end = await runServerProgram(home, 'pg_ctl', args);
    if (end.exitCode === 0) return port;
    output = end.output;
  }
  const log = (await readFile(home.logFile, 'utf8').catch(() => '')).split('\n').slice(-15).join('\n');
  throw new Error(`PostgreSQL did not start on ${home.clusterFolder}. pg_ctl said:\n${output}\nThe end of ${home.logFile}:\n${log}`);
}

/** Ends the server: open transactions are rolled back, everything committed is on disk. */
export async function stopServer(home: ServerHome): Promise<void> {
  const { exitCode, output } = await runServerProgram(home, 'pg_ctl', ['-D', home.clusterFolder, '-m', 'fast', '-w', '-t', '60', 'stop']);
  if (exitCode !== 0 && (await findRunningServer(home)) !== undefined) {
    throw new Error(`PostgreSQL on ${home.clusterFolder} did not stop within 60 s. pg_ctl said:\n${output}`);
  }
}

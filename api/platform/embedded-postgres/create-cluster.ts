import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chown, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { runServerProgram } from './run-server-program.js';
import type { ServerHome } from './server-home.js';

/** Name of the only role of the cluster; also the name of its database. */
export const OWNER = 'fairpull';

/** Some pieces of the write-ahead log always lie there; of 16 MB, as by default, they were half of a new data folder. */
const WAL_PIECE_MB = 4;
/** Beyond that much of it the server writes down what it holds and begins anew. */
const MOST_WAL_MB = 16;

/**
 * Makes the cluster on the first start and checks it on every later one.
 * It is made beside its place and moved there when whole, so a start that was cut off leaves nothing that looks finished.
 * @throws Error when initdb fails, when the cluster is of another major version, or when its password file is gone
 */
export async function createClusterIfMissing(home: ServerHome): Promise<void> {
  if (existsSync(home.clusterFolder)) {
    await requireUsableCluster(home);
    return;
  }
  const making = `${home.clusterFolder}.making`;
  await rm(making, { recursive: true, force: true });
  await writePassword(home);
  const { exitCode, output } = await runServerProgram(home, 'initdb', [
    ...['-D', making, '-U', OWNER, '-A', 'scram-sha-256', '--pwfile', home.passwordFile],
    ...['--encoding=UTF8', '--locale=C', '--data-checksums'],
    ...[`--wal-segsize=${WAL_PIECE_MB}`, '-c', `min_wal_size=${2 * WAL_PIECE_MB}MB`, '-c', `max_wal_size=${MOST_WAL_MB}MB`],
  ]);
  if (exitCode !== 0) {
    await rm(making, { recursive: true, force: true });
    throw new Error(`PostgreSQL could not make its data folder ${home.clusterFolder} (initdb ended with ${String(exitCode)}):\n${output}`);
  }
  await rename(making, home.clusterFolder);
}

async function writePassword(home: ServerHome): Promise<void> {
  if (existsSync(home.passwordFile)) return;
  const temporary = `${home.passwordFile}.making`;
  await rm(temporary, { force: true });
  await writeFile(temporary, randomBytes(24).toString('hex'), { mode: 0o600, flag: 'wx' });
  if (home.account) await chown(temporary, home.account.uid, home.account.gid);
  await rename(temporary, home.passwordFile);
}

async function requireUsableCluster(home: ServerHome): Promise<void> {
  const major = (await readFile(join(home.clusterFolder, 'PG_VERSION'), 'utf8')).trim();
  if (major !== home.major) {
    throw new Error(
      `${home.clusterFolder} was made by PostgreSQL ${major}; the installed one is ${home.major}, which cannot read it. ` +
        `Restore a backup into a new data folder, or go back to a version of the program that brings PostgreSQL ${major}.`,
    );
  }
  if (!existsSync(home.passwordFile)) {
    throw new Error(
      `${home.passwordFile} is missing: without it nobody can sign in to the database in ${home.clusterFolder}. Put it back.`,
    );
  }
}

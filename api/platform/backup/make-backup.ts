import { mkdir, open, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import pg from 'pg';
import { appliedMigrations } from '../migrations/apply-migrations.js';
import { SOFTWARE_COMMIT, SOFTWARE_VERSION } from '../program/software-version.js';
import { LIST_FILE } from './backup-list.js';
import type { BackupList, FileBackup, TableBackup } from './backup-list.js';
import { fileIntoBackup, keptFiles } from './data-files.js';
import { beginSnapshot, dumpRows } from './tables.js';

/** What is to be backed up, and where to. */
export interface BackupSource {
  readonly databaseUrl: string;
  readonly dataFolder: string;
}

const TOLD_EVERY_FILES = 2000;
const PREFIX = 'fairpull-';
const HALF = '.part';
/** Whatever else lies there, as a backup that was given another name to stay, is nobody's to take away. */
const NAMED = /^fairpull-\d{4}-\d\d-\d\dT\d\d-\d\d-\d\dZ(\.part)?$/;

/**
 * Writes a backup into a new folder below the given one, while the program runs: the database as it is at one moment, then the files,
 * which are written before a row names them and never change. The folder gets its name when all of it is on the disk.
 * @returns the backup's folder
 * @throws Error when something cannot be read or written; then no backup is left, and those before stay
 */
export async function makeBackup(source: BackupSource, folder: string, say: (line: string) => void, now = new Date()): Promise<string> {
  const backup = resolve(folder, `${PREFIX}${now.toISOString().replaceAll(':', '-').replace(/\.\d+/, '')}`);
  const half = `${backup}${HALF}`;
  await mkdir(join(half, 'database'), { recursive: true });
  try {
    const database = await dumpDatabase(source.databaseUrl, half, say);
    const files = await copyFiles(source.dataFolder, half, say);
    const list: BackupList = {
      format: 1,
      madeAt: now.toISOString(),
      program: { version: SOFTWARE_VERSION, commit: SOFTWARE_COMMIT },
      ...database,
      files,
    };
    await writeFile(join(half, LIST_FILE), JSON.stringify(list, null, 1), { flush: true });
    await rename(half, backup);
    await onDisk(resolve(folder));
    return backup;
  } catch (error) {
    await rm(half, { recursive: true, force: true });
    throw new Error(`The backup was not made, and nothing of it is left; those before stay. ${(error as Error).message}`, { cause: error });
  }
}

async function dumpDatabase(
  databaseUrl: string,
  half: string,
  say: (line: string) => void,
): Promise<Pick<BackupList, 'postgres' | 'migrations' | 'tables'>> {
  const client = new pg.Client({ connectionString: databaseUrl, application_name: 'fairpull: backup', connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    const tables: TableBackup[] = [];
    const there = await beginSnapshot(client);
    if (there.length === 0) throw new Error('The database holds no house, not even an empty one. Name that of the house in DATABASE_URL.');
    for (const table of there) {
      const written = await dumpRows(client, table, half);
      tables.push(written);
      say(`  ${written.name}: ${written.rows} rows`);
    }
    const { rows } = await client.query<{ version: string }>(`SELECT current_setting('server_version') AS version`);
    const migrations = await appliedMigrations(client);
    return { postgres: rows[0]?.version ?? '', migrations: migrations.map(({ name, checksum }) => ({ name, checksum })), tables };
  } finally {
    await client.end();
  }
}

async function copyFiles(dataFolder: string, half: string, say: (line: string) => void): Promise<FileBackup[]> {
  const copied: FileBackup[] = [];
  const paths = await keptFiles(resolve(dataFolder));
  for (const [index, path] of paths.entries()) {
    const file = await fileIntoBackup(resolve(dataFolder), path, half);
    if (file) copied.push(file);
    if ((index + 1) % TOLD_EVERY_FILES === 0 || index + 1 === paths.length) say(`  files: ${index + 1} of ${paths.length}`);
  }
  return copied;
}

/** A folder's entries, too, are on the disk when this comes back; where folders cannot be opened the system sees to it. */
async function onDisk(folder: string): Promise<void> {
  const handle = await open(folder).catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/**
 * Takes away the oldest finished backups of a folder, and what was cut off before the newest of them.
 * @param keep how many stay
 * @returns names of those that were taken away
 */
export async function forgetOldBackups(folder: string, keep: number): Promise<string[]> {
  const named = (await readdir(folder)).filter((name) => NAMED.test(name)).sort();
  const finished = named.filter((name) => !name.endsWith(HALF));
  const newest = finished.at(-1) ?? '';
  const cutOff = named.filter((name) => name.endsWith(HALF) && name < newest);
  const old = [...finished.slice(0, Math.max(0, finished.length - keep)), ...cutOff];
  for (const name of old) await rm(join(folder, name), { recursive: true, force: true });
  return old;
}

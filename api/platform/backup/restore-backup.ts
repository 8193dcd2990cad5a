import { mkdir } from 'node:fs/promises';
import { resolve } from 'node:path';
import pg from 'pg';
import { appliedMigrations, applyMigrations, MIGRATIONS_FOLDER } from '../migrations/apply-migrations.js';
import { readBackupList } from './backup-list.js';
import type { BackupList } from './backup-list.js';
import { fileOutOfBackup } from './data-files.js';
import type { BackupSource } from './make-backup.js';
import { beginSnapshot, digestOfRows, loadTables } from './tables.js';

/**
 * Puts a backup into an empty database and an empty data folder: files, then the schema as it was, the rows, and the migrations since.
 * A restore that was cut off is begun again with the same command.
 * @throws Error when the database holds a record already, another file is in the way, or the backup was changed
 */
export async function restoreBackup(backup: string, { databaseUrl, dataFolder }: BackupSource, say: (line: string) => void): Promise<void> {
  const list = await readBackupList(backup);
  await withClient(databaseUrl, (client) => requireEmpty(client, list));
  await mkdir(resolve(dataFolder), { recursive: true });
  for (const file of list.files) await fileOutOfBackup(backup, file, resolve(dataFolder));
  say(`  files: ${list.files.length}`);
  await applyMigrations(databaseUrl, MIGRATIONS_FOLDER, list.migrations);
  await withClient(databaseUrl, (client) => loadTables(client, backup, list.tables, say));
  await applyMigrations(databaseUrl);
}

async function requireEmpty(client: pg.Client, list: BackupList): Promise<void> {
  const filled: string[] = [];
  for (const table of await beginSnapshot(client)) {
    const { rowCount } = await client.query(`SELECT 1 FROM "${table.name}" LIMIT 1`);
    if (rowCount !== 0) filled.push(table.name);
  }
  const elsewhere = 'Name an empty one in DATABASE_URL, or another DATA_FOLDER for the embedded server.';
  if (filled.length > 0)
    throw new Error(
      `The database holds a record already (${filled.slice(0, 5).join(', ')}), and a restore overwrites nothing. ${elsewhere}`,
    );
  if ((await appliedMigrations(client)).length > list.migrations.length)
    throw new Error(`The database was brought further already than the backup was; its rows would not fit. ${elsewhere}`);
}

/**
 * Holds the rows of a database against those of a backup; of a restore that was upgraded meanwhile the tables that changed differ.
 * @returns names of the tables whose rows differ
 */
export async function tablesThatDiffer({ tables }: BackupList, databaseUrl: string): Promise<string[]> {
  return withClient(databaseUrl, async (client) => {
    const differing: string[] = [];
    for (const table of await beginSnapshot(client)) {
      const expected = tables.find(({ name }) => name === table.name);
      const found = await digestOfRows(client, table);
      if (expected?.sha256 !== found.sha256) differing.push(table.name);
    }
    return differing;
  });
}

async function withClient<Answer>(databaseUrl: string, work: (client: pg.Client) => Promise<Answer>): Promise<Answer> {
  const client = new pg.Client({ connectionString: databaseUrl, application_name: 'fairpull: restore', connectionTimeoutMillis: 10_000 });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

/**
 * `npm run backup [-- folder]`, `npm run restore -- <backup>`, `npm run check-backup -- <backup> [--drill]`: on DATABASE_URL, or else on the
 * embedded server of this checkout. A backup is made while the program runs; a restore goes into what is empty.
 */
import { resolve } from 'node:path';
import { drill } from './backup-drill.js';
import { checkBackup } from './platform/backup/check-backup.js';
import { makeBackup } from './platform/backup/make-backup.js';
import { restoreBackup } from './platform/backup/restore-backup.js';
import { letProgramIn } from './platform/migrations/grant-program.js';
import type { DatabasePlace } from './platform/embedded-postgres/with-database.js';
import { withDatabase } from './platform/embedded-postgres/with-database.js';

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

async function backup(folder: string): Promise<void> {
  say('Backing up …');
  const made = await withDatabase(process.env, (place) => makeBackup(place, folder, say));
  say(`The backup is in ${made}. Keep a copy on another machine; it holds the signing key and everybody's data.`);
}

async function restore(folder: string): Promise<void> {
  say(`Restoring ${folder} …`);
  const restoring = async (place: DatabasePlace): Promise<void> => {
    await restoreBackup(folder, place, say);
    await letProgramIn(place.databaseUrl, place.programUrl);
  };
  await withDatabase(process.env, restoring, { mayMake: true });
  say('Restored. Start the program: it builds the site again.');
}

async function check(folder: string, withDrill: boolean): Promise<void> {
  const { list, faults } = await checkBackup(folder);
  const rows = list.tables.reduce((sum, table) => sum + table.rows, 0);
  const { version, commit } = list.program;
  say(`Made ${list.madeAt} by version ${version}${commit === null ? '' : ` (${commit.slice(0, 12)})`} on PostgreSQL ${list.postgres}:`);
  say(`${rows} rows of ${list.tables.length} tables, ${list.files.length} files.`);
  const found = [...faults, ...(withDrill && faults.length === 0 ? await drill(folder, list, say, process.env['DATABASE_OWNER_URL']) : [])];
  for (const fault of found) say(fault);
  say(found.length === 0 ? 'Every part is as it was written.' : `${found.length} faults. Take an older backup.`);
  process.exitCode = found.length === 0 ? 0 : 1;
}

const [command, ...words] = process.argv.slice(2);
const folder = words.find((word) => !word.startsWith('--'));
const unknown = words.find((word) => word.startsWith('--') && word !== '--drill');

async function run(): Promise<void> {
  if (unknown !== undefined) throw new Error(`"${unknown}" is not known; check-backup knows --drill.`);
  if (command === 'backup') return backup(resolve(folder ?? 'backups'));
  if (folder === undefined)
    throw new Error(`Name the backup's folder: npm run ${command === 'check' ? 'check-backup' : 'restore'} -- <folder>`);
  return command === 'restore' ? restore(resolve(folder)) : check(resolve(folder), words.includes('--drill'));
}

await run().catch((error: unknown) => {
  console.error(`\n${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});

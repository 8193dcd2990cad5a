import { mkdir } from 'node:fs/promises';
import { resolve } from 'node:path';
import { checkBackup } from './check-backup.js';
import { forgetOldBackups, makeBackup } from './make-backup.js';
import type { BackupSource } from './make-backup.js';

/**
 * Makes a backup, reads it through, and only then takes away the oldest.
 * @param keep how many stay
 * @returns a sentence for the log
 * @throws Error when it was not made, or is not as it was written; then no older one is taken away
 */
export async function nightlyBackup(source: BackupSource, folder: string, keep: number): Promise<string> {
  await mkdir(resolve(folder), { recursive: true });
  const made = await makeBackup(source, folder, () => undefined);
  const { faults } = await checkBackup(made);
  if (faults.length > 0) throw new Error(`The backup ${made} is not as it was written; those before stay. ${faults.slice(0, 3).join(' ')}`);
  const gone = await forgetOldBackups(folder, keep);
  return `The backup ${made} is made and read through${gone.length === 0 ? '' : `; taken away: ${gone.join(', ')}`}.`;
}

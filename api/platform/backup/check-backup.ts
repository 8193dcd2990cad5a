import { readBackupList } from './backup-list.js';
import type { BackupList } from './backup-list.js';
import { fileInBackup } from './data-files.js';
import { digestInBackup } from './tables.js';

/** What a look at a backup found. */
export interface BackupVerdict {
  readonly list: BackupList;
  /** One sentence for each part that is lost or changed. */
  readonly faults: readonly string[];
}

/**
 * Reads every part of a backup and holds it against its digest in the list; changes nothing and needs no database.
 * @throws Error when the folder is no finished backup
 */
export async function checkBackup(backup: string): Promise<BackupVerdict> {
  const list = await readBackupList(backup);
  const faults: string[] = [];
  for (const table of list.tables) {
    const found = await digestInBackup(backup, table).catch((error: unknown) => (error as Error).message);
    if (found !== table.sha256) faults.push(`${table.file}: found ${found}; expected SHA-256 ${table.sha256}.`);
  }
  for (const { path, sha256 } of list.files) {
    const found = await fileInBackup(backup, path);
    if (found?.sha256 !== sha256) faults.push(`${path}: found ${found?.sha256 ?? 'no such file'}; expected SHA-256 ${sha256}.`);
  }
  return { list, faults };
}

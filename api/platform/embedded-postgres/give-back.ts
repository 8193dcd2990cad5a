import { existsSync } from 'node:fs';
import { chmod, lchown, readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Account } from './unprivileged-account.js';

/**
 * A data folder that was copied belongs to whoever copied it, and everybody may look into it; PostgreSQL starts in neither.
 * As root all of it is given to the account that the server runs under; somebody else is told what to do.
 * @param account undefined: our own
 * @throws Error when it belongs to another account and we may not give it away
 */
export async function giveBack(folder: string, clusterFolder: string, account: Account | undefined): Promise<void> {
  if (!existsSync(clusterFolder)) return;
  const { uid, mode } = await stat(clusterFolder);
  const owner = account?.uid ?? process.getuid?.();
  if (owner === undefined) return;
  if (uid !== owner) {
    if (!account)
      throw new Error(
        `${clusterFolder} belongs to another account (number ${uid}), so PostgreSQL cannot start in it. ` +
          `Give it to this one: sudo chown -R ${owner} '${folder}'; or start as the account that it belongs to.`,
      );
    await giveAll(folder, account);
  }
  if ((mode & 0o077) !== 0) await chmod(clusterFolder, 0o700);
}

async function giveAll(folder: string, account: Account): Promise<void> {
  const entries = await readdir(folder, { recursive: true });
  for (const path of [folder, ...entries.map((entry) => join(folder, entry))]) await lchown(path, account.uid, account.gid);
}

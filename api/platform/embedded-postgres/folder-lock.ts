import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';

const WAIT_AT_MOST_MS = 90_000;
const LOOK_AGAIN_MS = 50;

/**
 * Runs `work` while no other process runs its own under the same folder.
 * The lock is a file with the holder's process id; one left by a killed process is taken over.
 * @throws Error when the holder does not let go within 90 s
 */
export async function withFolderLock<Result>(folder: string, work: () => Promise<Result>): Promise<Result> {
  const file = join(folder, 'lock');
  await takeLock(file);
  try {
    return await work();
  } finally {
    await rm(file, { force: true });
  }
}

async function takeLock(file: string): Promise<void> {
  const giveUpAt = Date.now() + WAIT_AT_MOST_MS;
  while (!(await tryToTake(file))) {
    const holder = await readHolder(file);
    // Read twice: between the two another process may have taken over the abandoned lock.
    if (holder !== undefined && !isAlive(holder) && (await readHolder(file)) === holder) await rm(file, { force: true });
    if (Date.now() > giveUpAt) {
      throw new Error(
        `${file} has been held by process ${String(holder)} for more than ${WAIT_AT_MOST_MS / 1000} s. ` +
          'Wait for that process or end it; if it does not belong to this program, remove the file.',
      );
    }
    await pause(LOOK_AGAIN_MS);
  }
}

async function tryToTake(file: string): Promise<boolean> {
  try {
    await writeFile(file, String(process.pid), { flag: 'wx', mode: 0o600 });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}

async function readHolder(file: string): Promise<number | undefined> {
  const text = await readFile(file, 'utf8').catch(() => '');
  return /^\d+$/.test(text) ? Number(text) : undefined;
}

/** Whether a process with this id runs now. A foreign one that we may not signal counts as running. */
export function isAlive(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

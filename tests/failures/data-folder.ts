import { chmod, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { isAlive } from '../../api/platform/embedded-postgres/folder-lock.js';

/** A temporary data folder that the server's account may pass through. */
export async function makeDataFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'fairpull-faults-'));
  await chmod(folder, 0o711);
  return folder;
}

/** Process id of the folder's server; undefined when there is none. */
export async function serverProcessId(folder: string): Promise<number | undefined> {
  const text = await readFile(join(folder, 'postgres', 'cluster', 'postmaster.pid'), 'utf8').catch(() => '');
  const id = Number(text.split('\n')[0]);
  return text !== '' && isAlive(id) ? id : undefined;
}

/** Ends what a failed test left behind, then takes the folder away. */
export async function removeDataFolder(folder: string): Promise<void> {
  const id = await serverProcessId(folder);
  if (id !== undefined) {
    process.kill(id, 'SIGINT');
    await waitUntil('the left server ends', async () => (await serverProcessId(folder)) === undefined);
  }
  await rm(folder, { recursive: true, force: true });
}

/** Waits until something holds. @throws Error naming it when it does not within the time */
export async function waitUntil(what: string, holds: () => Promise<boolean> | boolean, withinMs = 20_000): Promise<void> {
  const giveUpAt = Date.now() + withinMs;
  while (!(await holds())) {
    if (Date.now() > giveUpAt) throw new Error(`Waited ${withinMs / 1000} s in vain until ${what}.`);
    await pause(50);
  }
}

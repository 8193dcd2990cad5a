import { Logger } from '@nestjs/common';
import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { OpenOrder } from '../../contract/order-state.js';
import type { Jobs } from './jobs.js';

/** A file that is as old as the worker's last proof that it does its work; whoever watches the container looks at its age. */
export const SIGN_OF_LIFE = join(tmpdir(), 'fairpull-worker-works');
const EVERY_MS = 20_000;
const DUE_AT_MOST_MS = 10 * 60_000;

/** Queues in which something has been due for ten minutes and nobody is at anything. Pure. */
export function leftLying(open: readonly OpenOrder[], now: Date): string[] {
  const atWork = new Set(open.filter(({ state }) => state === 'running').map(({ queue }) => queue));
  const due = open.filter(({ nextAttemptAt }) => nextAttemptAt !== null && now.getTime() - Date.parse(nextAttemptAt) > DUE_AT_MOST_MS);
  return [...new Set(due.map(({ queue }) => queue))].filter((queue) => !atWork.has(queue));
}

/** Renews the sign while the queue answers and nothing lies there that nobody takes up; a process that merely runs gives none. */
export async function giveSignOfLife(jobs: Pick<Jobs, 'open'>, now: Date, file = SIGN_OF_LIFE): Promise<void> {
  const lying = leftLying(await jobs.open(), now);
  if (lying.length > 0) throw new Error(`Orders are due and not taken up: ${lying.join(', ')}.`);
  await writeFile(file, now.toISOString());
}

/** Does so from now on. */
export function keepGivingSigns(jobs: Jobs): void {
  const log = new Logger('worker');
  const give = () => giveSignOfLife(jobs, new Date()).catch((error: unknown) => log.warn(`No sign of life: ${String(error)}`));
  void give();
  setInterval(() => void give(), EVERY_MS).unref();
}

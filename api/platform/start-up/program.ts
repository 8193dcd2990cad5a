import { spawn } from 'node:child_process';
import type { ClosingList } from './closing-list.js';
import { ROOT } from './start-options.js';

/** The job queue takes up to ten seconds to finish what it is at. */
const STOP_WITHIN_MS = 15_000;
const LOADER = new URL('../../../.config/load-typescript.mjs', import.meta.url).href;
const STOP_WITH_PARENT = new URL('./stop-with-parent.ts', import.meta.url).href;

/** What a server tells its parent once its port is its own. */
export interface Listening {
  readonly listeningAt: number;
}

/** A TypeScript program of ours that runs as a child. */
export interface Program {
  readonly name: string;
  /** Its exit code, once it has ended; null when a signal ended it. */
  readonly ended: Promise<number | null>;
  isRunning(): boolean;
  /** Whether it has said that it listens, as a server does. */
  isListening(): boolean;
}

/**
 * Starts a program; it ends with the list it is put on, and by itself when this process dies, however that happens.
 * @param path from the top of the checkout, e.g. api/worker.ts
 * @param env on top of our own environment
 * @param nodeOptions for the Node that runs it
 */
export function startProgram(
  closing: ClosingList,
  name: string,
  path: string,
  env: Readonly<Record<string, string>>,
  nodeOptions: readonly string[] = [],
): Program {
  const child = spawn(process.execPath, [...nodeOptions, '--import', LOADER, '--import', STOP_WITH_PARENT, path], {
    cwd: ROOT,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
    // A group of its own: Ctrl-C in the terminal reaches us alone, and we stop the children in order.
    detached: process.platform !== 'win32',
  });
  let isRunning = true;
  let isListening = false;
  child.on('message', (message) => (isListening ||= (message as Partial<Listening>).listeningAt !== undefined));
  const ended = new Promise<number | null>((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', (exitCode) => {
      isRunning = false;
      resolve(exitCode);
    });
  });
  // Asks it to end, and ends it when it has not within the time.
  const stop = async () => {
    if (!isRunning) return;
    child.kill('SIGTERM');
    const timer = setTimeout(() => child.kill('SIGKILL'), STOP_WITHIN_MS);
    await ended;
    clearTimeout(timer);
  };
  closing.add(stop);
  return { name, ended, isRunning: () => isRunning, isListening: () => isListening };
}

/**
 * Runs a program to its end.
 * @throws Error when it ends with anything but 0
 */
export async function runProgram(program: Program): Promise<void> {
  const exitCode = await program.ended;
  if (exitCode !== 0) throw new Error(`${program.name} ended with exit code ${String(exitCode)}; its own words stand above.`);
}

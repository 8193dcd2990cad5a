/** Servers and workers of their own process on the database and the data folder of a test application; each is ended by its own id. */
import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import type { Listening } from '../../api/platform/start-up/program.js';
import type { TestApplication } from './test-application.js';

const LOADER = ['--import', './.config/load-typescript.mjs'];

export function startProgram({ databaseUrl, dataFolder }: TestApplication, args: readonly string[], more: object = {}): ChildProcess {
  const env = {
    PATH: process.env['PATH'],
    DATABASE_URL: databaseUrl,
    DATA_FOLDER: dataFolder,
    PUBLIC_URL: 'http://127.0.0.1:3000',
    LOG_LEVEL: 'silent',
    REQUESTS_PER_MINUTE: '1000000',
    ...more,
  };
  return spawn(process.execPath, [...LOADER, ...args], { env, stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
}

export interface OwnServer {
  readonly child: ChildProcess;
  readonly port: number;
}

/** A server that answers, at the port that it told us: a free one that we look for may be another program's by the time it starts. */
export async function startServer(t: TestApplication, nodeOptions: readonly string[] = []): Promise<OwnServer> {
  const child = startProgram(t, [...nodeOptions, 'api/main.ts'], { PORT: '0' });
  const ended = once(child, 'exit').then(([code, signal]: unknown[]) => {
    throw new Error(`The server ended with ${String(code ?? signal)} before it listened; its own words stand above.`);
  });
  const [message] = (await Promise.race([once(child, 'message'), ended])) as [Listening];
  const port = message.listeningAt;
  await until(`the server at ${port} is ready`, async () => (await fetch(`http://127.0.0.1:${port}/health/ready`)).ok);
  return { child, port };
}

export async function until(what: string | (() => string), holds: () => Promise<boolean>): Promise<void> {
  for (const end = Date.now() + 90_000; !(await holds().catch(() => false));) {
    if (Date.now() > end) throw new Error(`Waited 90 s in vain until ${typeof what === 'string' ? what : what()}.`);
    await new Promise((resume) => setTimeout(resume, 10));
  }
}

/** Ends it at once, or as it is asked to. */
export async function end(child: ChildProcess, signal: 'SIGKILL' | 'SIGTERM'): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resume) => child.once('exit', resume));
  child.kill(signal);
  await gone;
}

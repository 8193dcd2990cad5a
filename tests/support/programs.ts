/** Servers and workers of their own process on the database and the data folder of a test application; each is ended by its own id. */
import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { findFreePort } from '../../api/platform/embedded-postgres/free-port.js';
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
  return spawn(process.execPath, [...LOADER, ...args], { env, stdio: ['ignore', 'ignore', 'inherit'] });
}

export interface OwnServer {
  readonly child: ChildProcess;
  readonly port: number;
}

/** A server that answers. */
export async function startServer(t: TestApplication): Promise<OwnServer> {
  const port = await findFreePort();
  const child = startProgram(t, ['api/main.ts'], { PORT: String(port) });
  const hasEnded = () => child.exitCode !== null || child.signalCode !== null;
  let last = 'nothing';
  await until(
    () => `a server is ready on ${port}: ${last}`,
    async () => {
      if (hasEnded()) return true;
      const answer = await fetch(`http://127.0.0.1:${port}/health/ready`, { signal: AbortSignal.timeout(5000) }).catch(String);
      last = typeof answer === 'string' ? answer : `${answer.status} ${await answer.text()}`;
      return typeof answer !== 'string' && answer.ok;
    },
  );
  if (hasEnded()) throw new Error(`The server on ${port} ended with ${child.exitCode ?? child.signalCode} before it was ready.`);
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

import { spawn } from 'node:child_process';
import { join } from 'node:path';
import type { ServerHome } from './server-home.js';

/** How a program of PostgreSQL ended. */
export interface ProgramEnd {
  readonly exitCode: number | null;
  /** Standard output and standard error, as they came. */
  readonly output: string;
}

/** Runs one program of PostgreSQL (initdb, pg_ctl) under the server's account and waits for its end. */
export function runServerProgram(home: ServerHome, program: 'initdb' | 'pg_ctl', args: readonly string[]): Promise<ProgramEnd> {
  return new Promise((resolve, reject) => {
    const child = spawn(join(home.binFolder, program), args, {
      ...(home.account && { uid: home.account.uid, gid: home.account.gid }),
      cwd: home.folder,
      env: { ...process.env, LC_ALL: 'C', TZ: 'UTC', PGOPTIONS: '' },
      stdio: ['ignore', 'pipe', 'pipe'],
      windowsHide: true,
      // A group of its own: Ctrl-C in the terminal is ours to pass on, in order.
      detached: process.platform !== 'win32',
    });
    let output = '';
    const collect = (chunk: Buffer) => {
      output += chunk.toString();
    };
    child.stdout.on('data', collect);
    child.stderr.on('data', collect);
    child.once('error', reject);
    // Not "close": on Windows the server inherits the pipes and keeps them open.
    child.once('exit', (exitCode) => {
      resolve({ exitCode, output });
    });
  });
}

import { spawn } from 'node:child_process';
import type { Writable } from 'node:stream';

const TOLD_AT_MOST = 4000;
/** TypeScript in a checkout, plain JavaScript in an image. */
const isTypeScript = import.meta.url.endsWith('.ts');
const LOADER = new URL('../../../.config/load-typescript.mjs', import.meta.url).href;

/** A program in a process of its own. */
export interface OwnProcess {
  /** Closed without a word when it is not wanted any more. */
  readonly stdin: Writable;
  /** What it said on stderr, once it is done; rejects with an Error that has the end of that. */
  readonly said: Promise<string>;
}

/**
 * Writes the client for programs in a process of its own: it reads every route, and takes the compiler of its types into memory.
 * @throws Error with the end of what it said
 */
export async function writeClient(folder: string, PATH: string): Promise<void> {
  const program = isTypeScript ? ['--import', LOADER, 'api/write-client.ts'] : ['api/write-client.js'];
  const { stdin, said } = runBeside([...program, folder], { PATH });
  stdin.end();
  await said;
}

export function runBeside(args: readonly string[], env: Readonly<Record<string, string>>): OwnProcess {
  const child = spawn(process.execPath, args, { env, stdio: ['pipe', 'ignore', 'pipe'] });
  // One that is gone tells so by its exit.
  child.stdin.on('error', () => undefined);
  const said = new Promise<string>((done, fail) => {
    let text = '';
    child.stderr.on('data', (chunk: Buffer) => (text = (text + chunk.toString()).slice(-TOLD_AT_MOST)));
    child.on('error', fail);
    child.on('exit', (code) => {
      if (code === 0) done(text);
      else fail(new Error(`The site's build ended with code ${String(code)}; the site before it stays. ${text}`));
    });
  });
  // Whoever tells it to begin looks at this.
  said.catch(() => undefined);
  return { stdin: child.stdin, said };
}

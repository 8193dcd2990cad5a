import { spawn } from 'node:child_process';

const TOLD_AT_MOST = 4000;
/** TypeScript in a checkout, plain JavaScript in an image. */
const isTypeScript = import.meta.url.endsWith('.ts');
const LOADER = new URL('../../../.config/load-typescript.mjs', import.meta.url).href;

/**
 * Writes the client for programs in a process of its own: it reads every route, and takes the compiler of its types into memory.
 * @throws Error with the end of what it said
 */
export async function writeClient(folder: string, PATH: string): Promise<void> {
  const program = isTypeScript ? ['--import', LOADER, 'api/write-client.ts'] : ['api/write-client.js'];
  await runBeside([...program, folder], { PATH });
}

/**
 * Runs a program of the site's build in a process of its own.
 * @returns the end of what it said on stderr
 * @throws Error with the same
 */
export function runBeside(args: readonly string[], env: Readonly<Record<string, string>>): Promise<string> {
  const child = spawn(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'pipe'] });
  return new Promise((done, fail) => {
    let text = '';
    child.stderr.on('data', (chunk: Buffer) => (text = (text + chunk.toString()).slice(-TOLD_AT_MOST)));
    child.on('error', fail);
    child.on('close', (code) => {
      if (code === 0) done(text);
      else fail(new Error(`The site's build ended with code ${String(code)}; the site before it stays. ${text}`));
    });
  });
}

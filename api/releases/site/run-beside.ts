import { spawn } from 'node:child_process';

const TOLD_AT_MOST = 4000;
/** TypeScript in a checkout, plain JavaScript in an image. */
const isTypeScript = import.meta.url.endsWith('.ts');
const LOADER = new URL('../../../.config/load-typescript.mjs', import.meta.url).href;

/**
 * Builds the pages of the site in a process of its own.
 * @param env all that the build is told
 * @returns what it could not do and went on without, a line each
 * @throws Error with the end of what the build said
 */
export async function runAstro(env: Readonly<Record<string, string>>): Promise<string[]> {
  const told = { ...env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const said = await runBeside(['node_modules/astro/bin/astro.mjs', 'build', '--root', 'site'], told);
  return said.split('\n').filter((line) => line.startsWith('Not drawn: '));
}

/**
 * Writes the client for programs in a process of its own: it reads every route, and takes the compiler of its types into memory.
 * @throws Error with the end of what it said
 */
export async function writeClient(folder: string, PATH: string): Promise<void> {
  const program = isTypeScript ? ['--import', LOADER, 'api/write-client.ts'] : ['api/write-client.js'];
  await runBeside([...program, folder], { PATH });
}

function runBeside(args: readonly string[], env: Readonly<Record<string, string>>): Promise<string> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'pipe'] });
    let said = '';
    child.stderr.on('data', (chunk: Buffer) => (said = (said + chunk.toString()).slice(-TOLD_AT_MOST)));
    child.on('error', fail);
    child.on('exit', (code) => {
      if (code === 0) done(said);
      else fail(new Error(`The site's build ended with code ${String(code)}; the site before it stays. ${said}`));
    });
  });
}

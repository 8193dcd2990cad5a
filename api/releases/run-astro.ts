import { spawn } from 'node:child_process';

const TOLD_AT_MOST = 4000;

/**
 * Builds the site in a process of its own.
 * @param env all that the build is told
 * @returns what it could not do and went on without, a line each
 * @throws Error with the end of what the build said
 */
export function runAstro(env: Readonly<Record<string, string>>): Promise<string[]> {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build', '--root', 'site'], {
      env: { ...env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let said = '';
    child.stderr.on('data', (chunk: Buffer) => (said = (said + chunk.toString()).slice(-TOLD_AT_MOST)));
    child.on('error', fail);
    child.on('exit', (code) => {
      if (code === 0) done(said.split('\n').filter((line) => line.startsWith('Not drawn: ')));
      else fail(new Error(`The site's build ended with code ${String(code)}; the site before it stays. ${said}`));
    });
  });
}

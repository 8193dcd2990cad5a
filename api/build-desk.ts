/** The desk is built once for a version of the program: its pages are shells that hold no figure. */
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdir, readFile, readlink, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { digestOfSources } from './platform/program/digest-of-sources.js';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** What a build is made from; what else changes leaves it as it is. */
const SOURCES = ['site/desk', 'site/look', 'api/contract', 'api/measurement/units', 'package-lock.json'];
const STAMP = 'built-from.txt';

/** Folder that always points at the whole, current desk. */
export const currentDesk = (dataFolder: string): string => resolve(dataFolder, 'site', 'desk', 'current');

/**
 * Builds the desk where it is missing or made from other sources; readers see the old one or the new one.
 * @param path where programs are found
 * @throws Error with what the build said, when it fails
 */
export async function buildDesk(dataFolder: string, path: string): Promise<void> {
  const stamp = await digestOfSources(SOURCES);
  const current = currentDesk(dataFolder);
  const built = await readFile(join(current, STAMP), 'utf8').catch(() => null);
  if (built === stamp) return;
  const folder = dirname(current);
  const name = `built-${randomUUID().slice(0, 8)}`;
  await mkdir(join(folder, name), { recursive: true });
  await runAstro(join(folder, name), path);
  await writeFile(join(folder, name, STAMP), stamp);
  await swapIn(current, name);
}

/** Only what stood there before is taken away: another process may be building beside us. */
async function swapIn(current: string, name: string): Promise<void> {
  const folder = dirname(current);
  const before = await readlink(current).catch(() => null);
  await symlink(name, join(folder, `${name}.link`), 'junction');
  await rename(join(folder, `${name}.link`), current);
  const old = [`${name}.cache`, ...(before === null ? [] : [basename(before)])];
  await Promise.all(old.map((entry) => rm(join(folder, entry), { recursive: true, force: true })));
}

function runAstro(out: string, path: string): Promise<void> {
  const env = { PATH: path, DESK_OUT: out, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const args = [join(ROOT, 'node_modules/astro/bin/astro.mjs'), 'build', '--root', join(ROOT, 'site/desk')];
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, args, { cwd: ROOT, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    const listen = (chunk: Buffer) => (said = (said + chunk.toString()).slice(-4000));
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.on('error', fail);
    child.on('exit', (code) => (code === 0 ? done() : fail(new Error(`The build of the desk ended with code ${String(code)}. ${said}`))));
  });
}

/**
 * `node --import ./.config/load-typescript.mjs .config/compile.ts <folder>`: the program as plain JavaScript, for an image in which no
 * compiler of it runs. Takes over what else it reads beside its modules.
 */
import { transformFile } from '@swc/core';
import { cp, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { MADE_SCRIPT, verifyScript } from '../api/releases/verify/verify-script.js';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** Starts the demo and a database of its own; neither is in an image. */
const LEFT_OUT = ['api/start.ts'];

async function compile(target: string): Promise<number> {
  const entries = await readdir(join(ROOT, 'api'), { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map(({ parentPath, name }) => relative(ROOT, join(parentPath, name)))
    .filter((path) => !LEFT_OUT.includes(path));
  for (const path of files) {
    const { code } = await transformFile(join(ROOT, path), { swcrc: true, sourceMaps: false });
    await write(join(target, path.replace(/\.ts$/, '.js')), code);
  }
  await write(join(target, 'api/releases/verify', MADE_SCRIPT), (await verifyScript()).content);
  await write(join(target, 'api/openapi/examples.json'), await readFile(join(ROOT, 'api/openapi/examples.json'), 'utf8'));
  await cp(join(ROOT, 'prisma/migrations'), join(target, 'prisma/migrations'), { recursive: true });
  return files.length;
}

async function write(file: string, text: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, text);
}

const [target] = process.argv.slice(2);
if (target === undefined) throw new Error('Name the folder that the compiled program goes to.');
console.log(`${await compile(target)} modules compiled.`);

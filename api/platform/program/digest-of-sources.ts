import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
/** Made by a build, beside its sources. */
const GENERATED = '.astro';

/**
 * Digest of files of this program: what was built from the same ones need not be built again.
 * @param sources files and folders, from the top of the checkout
 * @param except folder that is left out
 * @returns SHA-256, hex
 */
export async function digestOfSources(sources: readonly string[], except?: string): Promise<string> {
  const hash = createHash('sha256');
  const files = (await Promise.all(sources.map((source) => filesBelow(resolve(ROOT, source))))).flat();
  for (const file of files) {
    const path = relative(ROOT, file);
    if (except !== undefined && path.startsWith(join(except, '/'))) continue;
    hash.update(`${path}\n`).update(await readFile(file));
  }
  return hash.digest('hex');
}

async function filesBelow(path: string): Promise<string[]> {
  const entries = await readdir(path, { withFileTypes: true, recursive: true }).catch(() => null);
  if (entries === null) return [path];
  return entries
    .flatMap((entry) => (entry.isFile() && !entry.parentPath.includes(GENERATED) ? [join(entry.parentPath, entry.name)] : []))
    .sort();
}

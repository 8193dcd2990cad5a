import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ReleaseSource } from './release-source.js';

const NO_SUCH_FILE = ['ENOENT', 'ENOTDIR', 'EISDIR'];

/**
 * A folder that has, at each path of the API, what the API answers there; a list, e.g. `/v1/releases`, is a file `releases.json`.
 * @param folder absolute path
 */
export const folderSource = (folder: string): ReleaseSource => ({
  read: async (path) => (await bytesOf(join(folder, path))) ?? (await bytesOf(join(folder, `${path}.json`))),
});

async function bytesOf(file: string): Promise<Uint8Array | null> {
  try {
    return await readFile(file);
  } catch (error) {
    if (NO_SUCH_FILE.includes((error as NodeJS.ErrnoException).code ?? '')) return null;
    throw error;
  }
}

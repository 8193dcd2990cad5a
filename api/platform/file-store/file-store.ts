import { Inject, Injectable } from '@nestjs/common';
import { randomUUID } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join, normalize, resolve, sep } from 'node:path';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';

/** Files that outlive the database's rows: a folder, each file written whole or not at all. */
@Injectable()
export class FileStore {
  private readonly folder: string;

  constructor(@Inject(CONFIG) config: Config) {
    this.folder = resolve(config.DATA_FOLDER, 'files');
  }

  /** Writes a file through a neighbour that is renamed, so that no reader sees half of it. */
  async write(path: string, bytes: Uint8Array | string): Promise<void> {
    const target = this.place(path);
    await mkdir(dirname(target), { recursive: true });
    // Two writers of the same file each have a neighbour of their own.
    const half = `${target}.${randomUUID()}.part`;
    await writeFile(half, bytes);
    await rename(half, target);
  }

  /** Bytes of a file; null when there is none. */
  async read(path: string): Promise<Buffer | null> {
    try {
      return await readFile(this.place(path));
    } catch (error) {
      if (['ENOENT', 'EISDIR', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) return null;
      throw error;
    }
  }

  private place(path: string): string {
    const target = normalize(join(this.folder, path));
    if (!target.startsWith(this.folder + sep)) throw new Error(`A file's path leads out of the store: ${path}`);
    return target;
  }
}

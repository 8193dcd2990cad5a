import { Inject, Injectable } from '@nestjs/common';
import { randomUUID } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
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
    // Two writers of the same file each have a neighbour of their own.
    const half = `${target}.${randomUUID()}.part`;
    try {
      await mkdir(dirname(target), { recursive: true });
      await writeFile(half, bytes);
      await rename(half, target);
    } catch (error) {
      await rm(half, { force: true }).catch(() => undefined);
      throw unwritable(path, error);
    }
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

  /** Tells whether a file is the one that was read before: its size and when it was changed; null when there is none. */
  async stampOf(path: string): Promise<string | null> {
    const found = await stat(this.place(path), { bigint: true }).catch(() => null);
    return found?.isFile() ? `${found.size} ${found.mtimeNs} ${found.ino}` : null;
  }

  /** Place of a file or folder on this machine. */
  absolute(path: string): string {
    return this.place(path);
  }

  /** Names of the folders in a folder; none when it is not there. */
  async folders(path: string): Promise<string[]> {
    const entries = await readdir(this.place(path), { withFileTypes: true }).catch((error: unknown) => {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
      throw error;
    });
    return entries.filter((entry) => entry.isDirectory()).map(({ name }) => name);
  }

  async isFolder(path: string): Promise<boolean> {
    return (await stat(this.place(path)).catch(() => null))?.isDirectory() ?? false;
  }

  /** When something was last added to a folder or taken out of it. */
  async changedAt(path: string): Promise<Date> {
    return (await stat(this.place(path))).mtime;
  }

  /** Moves a folder to where another may lie, which is taken away. */
  async move(from: string, to: string): Promise<void> {
    await this.remove(to);
    await rename(this.place(from), this.place(to));
  }

  /** Takes a file or a folder away; nothing happens when it is not there. */
  async remove(path: string): Promise<void> {
    await rm(this.place(path), { recursive: true, force: true });
  }

  private place(path: string): string {
    const target = normalize(join(this.folder, path));
    if (!target.startsWith(this.folder + sep)) throw new Error(`A file's path leads out of the store: ${path}`);
    return target;
  }
}

const WHAT_TO_DO: Readonly<Record<string, string>> = {
  ENOSPC: 'The disk is full. Make room',
  EDQUOT: 'The quota of the disk is used up. Make room',
  // What Node says of a folder that it cannot make on a read-only disk.
  ENOENT: 'The data folder is gone or read-only. Mount it so that it can be written',
  EROFS: 'The data folder is read-only. Mount it so that it can be written',
  EACCES: 'The data folder may not be written by this account. Give it the right',
};

function unwritable(path: string, error: unknown): Error {
  const { code = '', message } = error as NodeJS.ErrnoException;
  const advice = WHAT_TO_DO[code];
  return new Error(`The file ${path} could not be written: ${message}.${advice ? ` ${advice}; nothing that is published is lost.` : ''}`, {
    cause: error,
  });
}

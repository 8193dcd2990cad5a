/** The files of the data folder that nothing else can make again, and how they go into a backup and back. */
import { createReadStream, createWriteStream } from 'node:fs';
import { chmod, mkdir, readdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { DATA } from './backup-list.js';
import type { FileBackup } from './backup-list.js';
import { DigestStream } from './digest-stream.js';

/** The site and the desk are built again; the embedded database goes row by row. */
const KEPT = ['files', 'keys', 'standing-exceptions.json'];
/** Only the owner may read a signing key, also where it is copied to. */
const SECRET = /^keys\//;
const HALF_WRITTEN = /\.part$/;

/** Paths in the data folder of all files that are kept. */
export async function keptFiles(dataFolder: string): Promise<string[]> {
  const found = await Promise.all(KEPT.map((name) => below(join(dataFolder, name))));
  return found
    .flat()
    .map((path) => relative(dataFolder, path).replaceAll(sep, '/'))
    .filter((path) => !HALF_WRITTEN.test(path))
    .sort();
}

async function below(path: string): Promise<string[]> {
  const found = await stat(path).catch(() => null);
  if (found === null) return [];
  if (found.isFile()) return [path];
  const entries = await readdir(path, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map(({ parentPath, name }) => join(parentPath, name));
}

/** Copies a file of the data folder into a backup; null when it was taken away meanwhile, as what nothing names is. */
export async function fileIntoBackup(dataFolder: string, path: string, backup: string): Promise<FileBackup | null> {
  const copied = await copy(join(dataFolder, path), join(backup, DATA, path), SECRET.test(path)).catch((error: unknown) => {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  });
  return copied && { path, ...copied };
}

/** Size and digest of a file in a backup; null when it is not there. */
export async function fileInBackup(backup: string, path: string): Promise<Omit<FileBackup, 'path'> | null> {
  return digestOf(join(backup, DATA, path));
}

/**
 * Copies a file of a backup into a data folder; one that is there already, byte for byte, stays.
 * @throws Error when another file of this name is there, or the backup's was changed
 */
export async function fileOutOfBackup(backup: string, { path, sizeBytes, sha256 }: FileBackup, dataFolder: string): Promise<void> {
  const target = join(dataFolder, path);
  const there = await digestOf(target);
  if (there?.sha256 === sha256) return;
  if (there) throw new Error(`${target} is there already and is another file than the backup's. Restore into an empty data folder.`);
  const half = `${target}.part`;
  const copied = await copy(join(backup, DATA, path), half, SECRET.test(path));
  if (copied.sha256 !== sha256) {
    await rm(half);
    throw new Error(
      `${path} of the backup was changed: ${copied.sizeBytes} bytes, SHA-256 ${copied.sha256}; expected ${sizeBytes}, ${sha256}.`,
    );
  }
  await rename(half, target);
}

async function copy(source: string, target: string, isSecret: boolean): Promise<Omit<FileBackup, 'path'>> {
  await mkdir(dirname(target), { recursive: true });
  const digest = new DigestStream();
  await pipeline(createReadStream(source), digest, createWriteStream(target, { flush: true, mode: isSecret ? 0o600 : 0o644 }));
  if (isSecret) await chmod(target, 0o600);
  return { sizeBytes: digest.sizeBytes, sha256: digest.digest() };
}

async function digestOf(path: string): Promise<Omit<FileBackup, 'path'> | null> {
  const digest = new DigestStream();
  const nowhere = new Writable({ write: (_chunk, _encoding, done) => done() });
  try {
    await pipeline(createReadStream(path), digest, nowhere);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
  return { sizeBytes: digest.sizeBytes, sha256: digest.digest() };
}

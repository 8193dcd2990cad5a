import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fetchBytes } from './fetch-bytes.js';

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

async function fromCache(digest: string): Promise<Uint8Array | null> {
  const folder = process.env['SITE_CACHE'];
  if (!folder) return null;
  const bytes = await readFile(join(folder, 'files', digest)).catch(() => null);
  return bytes && sha256(bytes) === digest ? bytes : null;
}

async function toCache(digest: string, bytes: Uint8Array): Promise<void> {
  const folder = process.env['SITE_CACHE'];
  if (!folder) return;
  const target = join(folder, 'files', digest);
  const draft = `${target}.${process.pid}`;
  await mkdir(join(folder, 'files'), { recursive: true });
  await writeFile(draft, bytes);
  // A rename is whole or not at all: a build beside this one never reads half a file.
  await rename(draft, target);
}

/**
 * Fetches a file of a release and checks it against its digest.
 * @param path Path on the API, e.g. `/v1/releases/2026/1/documents/edition.json`
 * @param digest Expected SHA-256, 64 hexadecimal digits
 * @throws When the file is missing or is not the one that was published
 */
export async function verifiedFile(path: string, digest: string): Promise<Uint8Array> {
  const cached = await fromCache(digest);
  if (cached) return cached;
  const bytes = await fetchBytes(path);
  if (!bytes) throw new Error(`${path} is named by its release but the API has no such file. Restore the release from a backup.`);
  const found = sha256(bytes);
  if (found !== digest)
    throw new Error(`${path} is not what was published: SHA-256 ${found} found, ${digest} expected. Restore the release from a backup.`);
  await toCache(digest, bytes);
  return bytes;
}

import { createHash } from 'node:crypto';
import { fetchBytes } from './fetch-bytes.js';

/**
 * Fetches a file of a release and checks it against its digest.
 * @param path Path on the API, e.g. `/v1/releases/2026/1/documents/edition.json`
 * @param digest Expected SHA-256, 64 hexadecimal digits
 * @throws When the file is missing or is not the one that was published
 */
export async function verifiedFile(path: string, digest: string): Promise<Uint8Array> {
  const bytes = await fetchBytes(path);
  if (!bytes) throw new Error(`${path} is named by its release but the API has no such file. Restore the release from a backup.`);
  const found = createHash('sha256').update(bytes).digest('hex');
  if (found !== digest)
    throw new Error(`${path} is not what was published: SHA-256 ${found} found, ${digest} expected. Restore the release from a backup.`);
  return bytes;
}

/** The compressed forms of a release's files, made once it is published. They lie beside its folder: in it is only what was signed. */
import type { FileStore } from '../../platform/file-store/file-store.js';
import { compressAs, COMPRESSED_AS, SMALLEST_TO_COMPRESS } from '../../platform/http/headers/compress.js';
import type { Coding } from '../../platform/http/headers/compress.js';
import { ARCHIVE } from '../../reckoning/release-archive.js';

/** End of the folder's name, as houses have it on disk. */
export const BESIDE = '.pressed';

/** Folder of the compressed forms of a release. */
export const compressedFolder = (releaseFolder: string): string => `${releaseFolder}${BESIDE}`;

/** Place of the compressed form of a file in the file store. */
export const compressedPath = (releaseFolder: string, path: string, coding: Coding): string =>
  `${compressedFolder(releaseFolder)}/${path}.${COMPRESSED_AS[coding]}`;

/** Writes the compressed forms of a file that is worth it. */
export async function compressFile(store: FileStore, folder: string, path: string, content: string | Uint8Array): Promise<void> {
  const bytes = Buffer.from(content);
  if (path === ARCHIVE || bytes.length < SMALLEST_TO_COMPRESS) return;
  for (const coding of ['br', 'gzip'] as const) await store.write(compressedPath(folder, path, coding), await compressAs(bytes, coding));
}

/** The compressed forms of a release's files, made once at publication. They lie beside its folder: in it is only what was signed. */
import type { FileStore } from '../../platform/file-store/file-store.js';
import { compressAs, COMPRESSED_AS, SMALLEST_TO_COMPRESS } from '../../platform/http/headers/compress.js';
import type { Coding } from '../../platform/http/headers/compress.js';
import type { ReleaseFile, SealedFile } from '../../reckoning/release-files.js';

type Content = Pick<ReleaseFile, 'path' | 'content'>;
const isText = (file: Pick<SealedFile, 'path' | 'content'>): file is Content => typeof file.content === 'string';

/** End of the folder's name, as houses have it on disk. */
export const BESIDE = '.pressed';

const AT_ONCE = 4;

/** Place of the compressed form of a file in the file store. */
export const compressedPath = (releaseFolder: string, path: string, coding: Coding): string =>
  `${releaseFolder}${BESIDE}/${path}.${COMPRESSED_AS[coding]}`;

/** Writes the compressed forms of texts that are worth it. */
export async function compressFiles(
  store: FileStore,
  folder: string,
  files: readonly Pick<SealedFile, 'path' | 'content'>[],
): Promise<void> {
  const waiting = files.filter(isText).filter(({ content }) => Buffer.byteLength(content) >= SMALLEST_TO_COMPRESS);
  while (waiting.length > 0) await Promise.all(waiting.splice(-AT_ONCE).map((file) => writeCompressed(store, folder, file)));
}

async function writeCompressed(store: FileStore, folder: string, { path, content }: Content): Promise<void> {
  for (const coding of ['br', 'gzip'] as const)
    await store.write(compressedPath(folder, path, coding), await compressAs(Buffer.from(content), coding));
}

import { Archive, ARCHIVE, ARCHIVE_TYPE } from '../../api/reckoning/release-archive.js';
import type { NamedFile, ReleaseFile } from '../../api/reckoning/release-files.js';

/** A file as a manifest lists it: a text, or bytes. */
export interface SealedFile extends NamedFile {
  readonly content: string | Uint8Array;
}

/** The archive of files that are at hand. */
export function archiveOf(files: readonly ReleaseFile[]): SealedFile {
  const archive = new Archive();
  const inOrder = files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  const parts = inOrder.map(({ path, content }) => archive.add(path, Buffer.from(content)));
  return { path: ARCHIVE, mediaType: ARCHIVE_TYPE, content: Buffer.concat([...parts, ...archive.end()]) };
}

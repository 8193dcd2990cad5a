/** All files of a release in one. Pure. */
import { strToU8, zipSync } from 'fflate';
import type { ReleaseFile, SealedFile } from './release-files.js';

export const ARCHIVE = 'release.zip';
/** The earliest time that the form can tell: what is in it has no times of its own, and the same files give the same bytes. */
const NO_TIME = new Date(1980, 0, 1);
const LEVEL = 6;

/** The archive; not in it are manifest and signature, which tell of it. */
export function archiveOf(files: readonly ReleaseFile[]): SealedFile {
  const inOrder = files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
  const entries = Object.fromEntries(inOrder.map(({ path, content }) => [path, strToU8(content)]));
  return { path: ARCHIVE, mediaType: 'application/zip', content: zipSync(entries, { mtime: NO_TIME, level: LEVEL }) };
}

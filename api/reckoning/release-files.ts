/** The files of a release and the manifest that seals them. Pure. */
import { sha256 } from '../platform/identifiers/identifiers.js';
import { FORMAT_VERSION } from '../contract/documents/release-documents.js';
import type { Manifest } from '../contract/documents/release-documents.js';
import { canonicalJson } from './canonical-json.js';

export interface ReleaseFile {
  readonly path: string;
  readonly mediaType: string;
  readonly content: string;
}

/** A file as a manifest lists it: a text, or bytes. */
export interface SealedFile extends Omit<ReleaseFile, 'content'> {
  readonly content: string | Uint8Array;
}

/** A JSON file in canonical form. */
export const jsonFile = (path: string, value: unknown): ReleaseFile => ({
  path,
  mediaType: 'application/json',
  content: canonicalJson(value),
});

/** Every file with its size and digest, in the order of the paths, and the digest of the release before. */
export function manifestOf(files: readonly SealedFile[], heading: Omit<Manifest, 'files' | 'formatVersion'>): Manifest {
  const listed = files.map(({ path, mediaType, content }) => ({
    path,
    mediaType,
    sizeBytes: Buffer.byteLength(content),
    sha256: sha256(content),
  }));
  return { formatVersion: FORMAT_VERSION, ...heading, files: listed.sort((a, b) => (a.path < b.path ? -1 : 1)) };
}

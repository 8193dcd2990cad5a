/** The files of a release and the manifest that seals them. Pure. */
import { FORMAT_VERSION } from '../contract/documents/release-documents.js';
import type { Manifest } from '../contract/documents/release-documents.js';
import { canonicalJson, canonicalParts } from './canonical-json.js';

export interface NamedFile {
  readonly path: string;
  readonly mediaType: string;
}

export interface ReleaseFile extends NamedFile {
  readonly content: string;
}

/** A file as it is computed: its text comes in parts, and once. */
export interface FileInParts extends NamedFile {
  readonly parts: Iterable<string>;
}

const JSON_TYPE = 'application/json';

/** A JSON file in canonical form. */
export const jsonFile = (path: string, value: unknown): ReleaseFile => ({ path, mediaType: JSON_TYPE, content: canonicalJson(value) });

/** The same in parts. */
export const jsonInParts = (path: string, value: unknown): FileInParts => ({ path, mediaType: JSON_TYPE, parts: canonicalParts(value) });

export const inParts = ({ content, ...file }: ReleaseFile): FileInParts => ({ ...file, parts: [content] });

export const whole = ({ parts, ...file }: FileInParts): ReleaseFile => ({ ...file, content: [...parts].join('') });

/** Every file with its size and digest, in the order of the paths, and the digest of the release before. */
export const manifestOf = (listed: Manifest['files'], heading: Omit<Manifest, 'files' | 'formatVersion'>): Manifest => ({
  formatVersion: FORMAT_VERSION,
  ...heading,
  files: listed.toSorted((a, b) => (a.path < b.path ? -1 : 1)),
});

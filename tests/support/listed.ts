import { sha256 } from '../../api/platform/identifiers/identifiers.js';
import type { SealedFile } from './archive-of.js';

/** A file as a manifest lists it. */
export const listed = ({ path, mediaType, content }: SealedFile) => ({
  path,
  mediaType,
  sizeBytes: Buffer.byteLength(content),
  sha256: sha256(content),
});

import { Readable } from 'node:stream';

/** A file as it comes over the wire: in pieces of a size that respects neither lines nor characters. */
export function bytesOf(text: string | Uint8Array, size = 64): AsyncIterable<Uint8Array> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const pieces = Array.from({ length: Math.ceil(bytes.length / size) }, (_, i) => bytes.subarray(i * size, (i + 1) * size));
  return Readable.from(pieces, { objectMode: true });
}

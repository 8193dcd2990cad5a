import type { FastifyReply, FastifyRequest } from 'fastify';
import { gzipSync } from 'node:zlib';

export interface StoredBytes {
  readonly bytes: Buffer;
  readonly mediaType: string;
  /** SHA-256 of the bytes, hex. */
  readonly digest: string;
}

const SMALLEST_TO_PRESS = 1024;
const MOST_KEPT = 200;
const pressed = new Map<string, Buffer>();

/** The gzip form of stored bytes; the last two hundred are kept, since what is published is asked for again and again. */
function gzipOf({ bytes, digest }: StoredBytes): Buffer {
  const known = pressed.get(digest);
  if (known) return known;
  const made = gzipSync(bytes);
  pressed.set(digest, made);
  const oldest = pressed.keys().next().value;
  if (pressed.size > MOST_KEPT && oldest !== undefined) pressed.delete(oldest);
  return made;
}

/**
 * Sends bytes as they are stored, never serialised again. The ETag is their digest, with -gzip for the pressed form (RFC 9110 8.8.3.3).
 * @param lifetime what caches may do: "immutable" for a release's own files, "revalidate" for addresses that a later release moves
 */
export function sendStoredBytes(
  request: FastifyRequest,
  reply: FastifyReply,
  stored: StoredBytes,
  lifetime: 'immutable' | 'revalidate',
): void {
  const isPressed = stored.bytes.length >= SMALLEST_TO_PRESS && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  const etag = isPressed ? `"${stored.digest}-gzip"` : `"${stored.digest}"`;
  void reply.headers({
    ETag: etag,
    Vary: 'Accept-Encoding',
    'Access-Control-Allow-Origin': '*',
    'Cache-Control': lifetime === 'immutable' ? 'public, max-age=31536000, immutable' : 'public, max-age=0, must-revalidate',
  });
  const seen = (request.headers['if-none-match'] ?? '').split(',').map((tag) => tag.trim().replace(/^W\//, ''));
  if (seen.includes(etag) || seen.includes('*')) return void reply.status(304).send();
  if (isPressed) void reply.header('Content-Encoding', 'gzip');
  void reply.type(stored.mediaType).send(isPressed ? gzipOf(stored) : stored.bytes);
}

import { Negotiator } from '@fastify/accept-negotiator';
import { LRUCache } from 'lru-cache';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { EXPOSED_HEADERS } from '../platform/http/headers/cross-origin.js';
import { FOREVER, REVALIDATE } from '../platform/http/headers/cache-lifetimes.js';
import { hasSeen } from '../platform/http/headers/conditional-reads.js';
import { SMALLEST_TO_COMPRESS } from '../platform/http/headers/compress.js';
import type { Coding } from '../platform/http/headers/compress.js';
import { rangeOf } from './byte-range.js';

/** What caches may do: "immutable" for a release's own files, "revalidate" for addresses that a later release moves. */
export type Lifetime = 'immutable' | 'revalidate';

/** Bytes that are sent as they are stored, with the headers that go before them. */
export interface StoredBytes {
  readonly bytes: Buffer;
  readonly etag: string;
  readonly heads: Readonly<Record<Lifetime, Heads>>;
}

/** Names and values in turn, as Node takes them fastest. */
interface Heads {
  readonly whole: string[];
  /** Without what describes the body. */
  readonly bare: string[];
  /** What a cache keeps anew and who may look (RFC 9110, 15.4.5): all else it has from the 200, and each header costs as much as finding the file. */
  readonly notModified: string[];
}

const CACHING: Readonly<Record<Lifetime, string>> = {
  immutable: FOREVER,
  revalidate: REVALIDATE,
};
const MOST_HEADERS_KNOWN = 500;
const IS_TEXT = /json|csv|text|javascript|markdown/;
// The same few values of Accept-Encoding come again and again, and anybody may invent new ones.
const negotiator = new Negotiator({
  supportedValues: ['br', 'gzip'],
  cache: new LRUCache<string, string>({ max: MOST_HEADERS_KNOWN }),
});

/** The coding in which bytes of this size go to this client; null for plain. */
export const codingFor = ({ headers }: IncomingMessage, sizeBytes: number, mediaType = 'application/json'): Coding | null =>
  // A part is a part of the plain bytes, whose digest is known; an archive is compressed already.
  sizeBytes < SMALLEST_TO_COMPRESS || headers.range !== undefined || !IS_TEXT.test(mediaType)
    ? null
    : negotiator.negotiate(headers['accept-encoding'] as string);

/**
 * Makes bytes ready to be sent again and again.
 * @param digest SHA-256 of the plain bytes, hex: the ETag, a weak one for the compressed form, which has other bytes (RFC 9110, 8.8.1)
 * @param coding how the bytes are compressed; null: they are plain
 */
export function storedBytes(bytes: Buffer, mediaType: string, digest: string, coding: Coding | null): StoredBytes {
  const etag = coding === null ? `"${digest}"` : `W/"${digest}"`;
  const type = IS_TEXT.test(mediaType) && !mediaType.includes(';') ? `${mediaType}; charset=utf-8` : mediaType;
  const compressed = coding === null ? [] : ['Content-Encoding', coding];
  const headsFor = (lifetime: Lifetime): Heads => {
    const kept = ['ETag', etag, 'Cache-Control', CACHING[lifetime], 'Vary', 'Accept-Encoding', 'Access-Control-Allow-Origin', '*'];
    const bare = [...kept, 'Accept-Ranges', 'bytes', ...FOR_ANY_PAGE];
    return {
      bare,
      whole: ['Content-Type', type, 'Content-Length', String(bytes.length), ...compressed, ...bare],
      notModified: [...kept, 'Access-Control-Expose-Headers', 'Deprecation, ETag, Link, Sunset'],
    };
  };
  return { bytes, etag, heads: { immutable: headsFor('immutable'), revalidate: headsFor('revalidate') } };
}

const FOR_ANY_PAGE = [
  'Access-Control-Expose-Headers',
  EXPOSED_HEADERS,
  'Cross-Origin-Resource-Policy',
  'cross-origin',
  'X-Content-Type-Options',
  'nosniff',
];

/** Sends the bytes, past everything that works on answers; 304 to a client that has them already, in whatever coding. */
export function sendBytes(request: IncomingMessage, response: ServerResponse, stored: StoredBytes, lifetime: Lifetime): void {
  const { bytes, etag, heads } = stored;
  const seen = request.headers['if-none-match'];
  if (seen !== undefined && (seen === etag || hasSeen(seen, etag))) response.writeHead(304, heads[lifetime].notModified).end();
  else if (request.headers.range !== undefined) sendPart(request, response, stored, lifetime);
  else response.writeHead(200, heads[lifetime].whole).end(request.method === 'HEAD' ? undefined : bytes);
}

/** The part that was asked for (RFC 9110, 14); the whole where it cannot be understood or what the client has is another. */
function sendPart(request: IncomingMessage, response: ServerResponse, { bytes, etag, heads }: StoredBytes, lifetime: Lifetime): void {
  const whole = heads[lifetime].whole;
  const range = rangeOf(request.headers.range ?? '', [request.headers['if-range']].flat()[0], etag, bytes.length);
  if (range === 'whole') response.writeHead(200, whole).end(request.method === 'HEAD' ? undefined : bytes);
  else if (range === 'none') response.writeHead(416, ['Content-Range', `bytes */${bytes.length}`, ...heads[lifetime].bare]).end();
  else {
    const [type, name] = whole;
    const part = bytes.subarray(range.from, range.to + 1);
    const partHeads = [type ?? '', name ?? '', 'Content-Length', String(part.length)];
    const place = ['Content-Range', `bytes ${range.from}-${range.to}/${bytes.length}`];
    response.writeHead(206, [...partHeads, ...place, ...heads[lifetime].bare]).end(request.method === 'HEAD' ? undefined : part);
  }
}

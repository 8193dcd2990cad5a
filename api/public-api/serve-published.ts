import type { IncomingMessage, ServerResponse } from 'node:http';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { TakeRequest } from '../platform/http/front-door.js';
import { compressAs } from '../platform/http/headers/compress.js';
import { deprecationHeads } from '../contract/deprecated-addresses.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { codingFor, sendBytes, storedBytes } from './stored-bytes.js';
import type { StoredBytes } from './stored-bytes.js';
import type { FoundFile, PublishedFiles } from './published-files.js';

/**
 * Answers plain reads of published files before anything else is done with the request: no guard, no limit, no database.
 * They cost less than timing them by route would, so they are counted as one. What has a query, is not published or is lost goes the ordinary way.
 */
export const takePublishedReads =
  (files: PublishedFiles): TakeRequest =>
  (request, response, leave) => {
    const found = isPlainRead(request) ? fileAt(files, request.url ?? '') : null;
    if (!found) return false;
    files.readsAtTheDoor += 1;
    const coding = codingFor(request, found.sizeBytes, found.mediaType);
    const known = files.inMemory(found, coding);
    if (known) send(request, response, found, known);
    else files.load(found, coding).then((bytes) => send(request, response, found, bytes), leave);
    return true;
  };

/** Sends a published file by the ordinary way. */
export async function sendPublished(request: FastifyRequest, reply: FastifyReply, files: PublishedFiles, found: FoundFile): Promise<void> {
  const coding = codingFor(request.raw, found.sizeBytes, found.mediaType);
  const bytes = files.inMemory(found, coding) ?? (await files.load(found, coding));
  reply.hijack();
  send(request.raw, reply.raw, found, bytes);
}

/** Sends what is made from stored documents, with the digest of the text as ETag. */
export async function sendJson(request: FastifyRequest, reply: FastifyReply, value: unknown): Promise<void> {
  const bytes = Buffer.from(JSON.stringify(value));
  const coding = codingFor(request.raw, bytes.length);
  const stored = storedBytes(coding === null ? bytes : await compressAs(bytes, coding), 'application/json', sha256(bytes), coding);
  reply.hijack();
  sendBytes(request.raw, reply.raw, stored, 'revalidate');
}

function send(request: IncomingMessage, response: ServerResponse, { isMoved }: FoundFile, bytes: StoredBytes): void {
  for (const [name, value] of deprecationHeads(request.url ?? '')) response.setHeader(name, value);
  sendBytes(request, response, bytes, isMoved ? 'revalidate' : 'immutable');
}

const isPlainRead = ({ method, url = '' }: IncomingMessage): boolean =>
  (method === 'GET' || method === 'HEAD') && url.startsWith('/v1/') && !url.includes('?');

/** Null also while nothing is loaded: the ordinary way then says so. */
function fileAt(files: PublishedFiles, url: string): FoundFile | null {
  try {
    return files.at(url);
  } catch {
    return null;
  }
}

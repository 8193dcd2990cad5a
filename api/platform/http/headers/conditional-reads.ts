import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { sha256 } from '../../identifiers/identifiers.js';
import { REVALIDATE } from './cache-lifetimes.js';

/** Whether a client has it already (RFC 9110, 13.1.2: compared weakly). @param header If-None-Match */
export const hasSeen = (header: string | undefined, etag: string): boolean =>
  header?.split(',').some((tag) => ['*', opaque(etag)].includes(opaque(tag.trim()))) ?? false;

const opaque = (tag: string): string => tag.replace(/^W\//, '');

/**
 * Gives public reads that are made for the asking their digest as ETag, weak as they may be compressed on the way, and answers 304 to whoever has them.
 * Register it before compression, which changes the bytes.
 */
export function registerConditionalReads(fastify: FastifyInstance): void {
  fastify.addHook('onSend', (request, reply, payload, done) => {
    if (!isPublicRead(request, reply) || typeof payload !== 'string') {
      done(null, payload);
      return;
    }
    const etag = `W/"${sha256(payload)}"`;
    reply.headers({ ETag: etag, 'Cache-Control': REVALIDATE });
    if (!hasSeen(request.headers['if-none-match'], etag)) {
      done(null, payload);
      return;
    }
    reply.status(304).removeHeader('Content-Length').removeHeader('Content-Type');
    done(null, null);
  });
}

/** Answers that are not for all say that nobody keeps them. */
const isPublicRead = ({ method, url }: FastifyRequest, reply: FastifyReply): boolean =>
  (method === 'GET' || method === 'HEAD') &&
  url.startsWith('/v1/') &&
  reply.statusCode === 200 &&
  reply.getHeader('etag') === undefined &&
  reply.getHeader('cache-control') !== 'no-store';

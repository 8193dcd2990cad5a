import cors from '@fastify/cors';
import type { FastifyInstance, FastifyRequest } from 'fastify';

/** What a script on another page may read of an answer, besides its body. */
export const EXPOSED_HEADERS =
  'Content-Disposition, Content-Range, Deprecation, ETag, Link, RateLimit-Limit, RateLimit-Remaining, RateLimit-Reset, Retry-After, Sunset, X-Request-Id';
const A_DAY_S = 86_400;

/** Reads that say who asks are for nobody's page but ours. */
const isForAnyPage = ({ method, url, headers }: FastifyRequest): boolean =>
  ['GET', 'HEAD', 'OPTIONS'].includes(method) &&
  url.startsWith('/v1/') &&
  headers.authorization === undefined &&
  headers.cookie === undefined;

/** Lets scripts of any page read what is public, refusals included (Fetch standard, CORS protocol); register it before whatever refuses. */
export async function registerCrossOrigin(fastify: FastifyInstance): Promise<void> {
  await fastify.register(cors, {
    hook: 'onRequest',
    delegator: (request, done) => {
      done(
        null,
        isForAnyPage(request)
          ? {
              origin: '*',
              methods: ['GET', 'HEAD'],
              allowedHeaders: ['If-None-Match', 'If-Range', 'Range'],
              exposedHeaders: EXPOSED_HEADERS,
              maxAge: A_DAY_S,
            }
          : { origin: false },
      );
    },
  });
  fastify.addHook('onRequest', (request, reply, done) => {
    if (isForAnyPage(request)) reply.header('Cross-Origin-Resource-Policy', 'cross-origin');
    done();
  });
}

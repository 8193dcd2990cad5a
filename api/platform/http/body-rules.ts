import type { FastifyInstance, FastifyRequest } from 'fastify';
import { LARGEST_READINGS_BYTES } from '../../contract/body-sizes.js';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';

/** What a route takes beyond a small JSON body; stands in its config. */
export interface BodyConfig {
  readonly takesMuch?: boolean;
  readonly takesFiles?: boolean;
}

declare module 'fastify' {
  // eslint-disable-next-line @typescript-eslint/no-empty-object-type -- this is how the framework's config gets members
  interface FastifyContextConfig extends BodyConfig {}
}

/** Each route takes as little as its work needs: a body that is larger, packed or of another kind is refused before it is read. */
export function registerBodyRules(fastify: FastifyInstance): void {
  fastify.removeContentTypeParser('text/plain');
  fastify.addHook('onRoute', (route) => {
    if (route.config?.takesMuch) route.bodyLimit = LARGEST_READINGS_BYTES;
  });
  fastify.addHook('onRequest', (request, _reply, done) => {
    try {
      refuseKind(request);
      done();
    } catch (error) {
      done(error as Error);
    }
  });
}

function refuseKind(request: FastifyRequest): void {
  const encoding = request.headers['content-encoding'];
  if (encoding !== undefined && encoding.toLowerCase() !== 'identity')
    throw new Problem(
      platformProblems['request/media-type'],
      `Content-Encoding is ${encoding}; expected a body that is not packed. Send it as it is.`,
      [],
      { 'Accept-Encoding': 'identity' },
    );
  const type = request.headers['content-type'];
  if (type === undefined || request.is404 || /^application\/json\b/i.test(type)) return;
  if (!request.routeOptions.config.takesFiles)
    throw new Problem(platformProblems['request/media-type'], `Content-Type is ${type}; expected application/json.`);
}

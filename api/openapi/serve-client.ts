import type { OpenAPIObject } from '@nestjs/swagger';
import type { FastifyInstance } from 'fastify';
import { typedClient } from './typed-client.js';
import type { TypedClient } from './typed-client.js';

const FILES = [
  ['fairpull.mjs', 'text/javascript; charset=utf-8', 'module'],
  ['fairpull.d.mts', 'text/plain; charset=utf-8', 'types'],
] as const;

/** Serves the client for programs beside the site: made from the description of this very program when it is first asked for. */
export function serveClient(fastify: FastifyInstance, describe: () => OpenAPIObject): void {
  let made: Promise<TypedClient> | undefined;
  for (const [name, type, part] of FILES)
    fastify.get(`/client/${name}`, async (_request, reply) => {
      const client = await (made ??= typedClient(describe()));
      return reply
        .header('Access-Control-Allow-Origin', '*')
        .header('Cross-Origin-Resource-Policy', 'cross-origin')
        .type(type)
        .send(client[part]);
    });
}

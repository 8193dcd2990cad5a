/** A Fastify with nothing on it that serves given bytes at given paths, and 304 to who has them. Started by a benchmark with a list as JSON. */
import fastify from 'fastify';
import { readFileSync } from 'node:fs';

interface Served {
  readonly path: string;
  readonly file: string;
  readonly mediaType: string;
  readonly etag: string;
}

const server = fastify();
for (const { path, file, mediaType, etag } of JSON.parse(process.argv[2] ?? '[]') as Served[]) {
  const bytes = readFileSync(file);
  server.get(path, (request, reply) => {
    if (request.headers['if-none-match'] === etag) return reply.status(304).header('ETag', etag).send();
    return reply.header('ETag', etag).type(mediaType).send(bytes);
  });
}
console.log(await server.listen({ port: 0, host: '127.0.0.1' }));

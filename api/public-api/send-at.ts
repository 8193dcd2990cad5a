import type { FastifyReply, FastifyRequest } from 'fastify';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { PublishedFiles } from './published-files.js';
import { sendPublished } from './serve-published.js';

export const nothingCalled = (what: string): Problem =>
  new Problem(
    platformProblems['request/not-found'],
    `Found nothing published as ${what}; expected an edition, a category, a variant or a file of a release. GET /v1/editions lists what is published, /docs every address.`,
  );

/**
 * Sends the published file that the address of a request leads to, as stored.
 * @throws Problem when nothing published stands there
 */
export async function sendAt(files: PublishedFiles, request: FastifyRequest, reply: FastifyReply): Promise<void> {
  const [path = ''] = request.url.split('?');
  const found = files.at(path);
  if (!found) throw nothingCalled(path);
  await sendPublished(request, reply, files, found);
}

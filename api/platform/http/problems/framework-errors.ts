import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Socket } from 'node:net';
import { platformProblems as known } from '../../errors/platform.errors.js';
import { Problem } from '../../errors/problem.js';
import { PROBLEM_TYPE, problemBody, rawProblem } from './problem-body.js';

interface Failure extends Error {
  readonly code?: string;
  readonly statusCode?: number;
}

const PROBLEM_OF_CLIENT_ERROR: Readonly<Record<string, Problem>> = {
  HPE_HEADER_OVERFLOW: new Problem(known['request/headers-too-large']),
  ERR_HTTP_REQUEST_TIMEOUT: new Problem(known['request/too-slow']),
};

/** What the framework refuses before any route is found is answered like all else. */
export const frameworkErrors = (publicUrl: string) => ({
  frameworkErrors: (error: Failure, request: FastifyRequest, reply: FastifyReply): void => {
    const problem =
      error.statusCode === 414
        ? new Problem(known['request/address-too-long'])
        : new Problem(known['request/malformed'], 'The address cannot be read. Encode what is special in it as %XX, in UTF-8.');
    const headers = { 'Content-Type': PROBLEM_TYPE, 'Cache-Control': 'no-store' };
    void reply
      .status(problem.kind.status)
      .headers(headers)
      .send(JSON.stringify(problemBody(problem, request.raw.url ?? '', publicUrl)));
  },
  clientErrorHandler: (error: Failure, socket: Socket): void => {
    const problem =
      PROBLEM_OF_CLIENT_ERROR[error.code ?? ''] ??
      new Problem(
        known['request/malformed'],
        'The first line or the headers are none of HTTP/1.1. Ask with a client for HTTP, at the port that the address names.',
      );
    if (socket.writable && error.code !== 'ECONNRESET') socket.write(rawProblem(problem, publicUrl));
    socket.destroy(error);
  },
});

import { STATUS_CODES } from 'node:http';
import type { Problem } from '../../errors/problem.js';

export const PROBLEM_TYPE = 'application/problem+json';

/** The answer of RFC 9457 for a problem at an address. */
export const problemBody = ({ kind, detail, errors, members }: Problem, address: string, publicUrl: string) => ({
  type: `${publicUrl}/problems/#${kind.code.replace('/', '-')}`,
  title: kind.title,
  status: kind.status,
  code: kind.code,
  detail,
  explains: kind.explains,
  instance: address.split('?')[0],
  errors,
  ...members,
});

/** The same as bytes of HTTP/1.1, for a request that could not be read as one. */
export function rawProblem(problem: Problem, publicUrl: string): string {
  const body = JSON.stringify(problemBody(problem, '', publicUrl));
  const { status } = problem.kind;
  return [
    `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}`,
    `Content-Type: ${PROBLEM_TYPE}`,
    `Content-Length: ${Buffer.byteLength(body)}`,
    'Cache-Control: no-store',
    'Connection: close',
    '',
    body,
  ].join('\r\n');
}

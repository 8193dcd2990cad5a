/** What operations answer when they do not do as asked, by status. */
import type { OpenAPIObject } from '@nestjs/swagger';
import { ERROR_CATALOGUE } from '../error-catalogue.js';
import { Problem } from '../platform/errors/problem.js';
import { problemBody } from '../platform/http/problems/problem-body.js';
import type { Json } from './components.js';

type Responses = NonNullable<NonNullable<OpenAPIObject['components']>['responses']>;

const WORDS: Readonly<Record<number, readonly [name: string, description: string]>> = {
  400: ['Malformed', 'The request cannot be read'],
  401: ['NotSignedIn', 'No valid session, token or password'],
  403: ['Forbidden', 'Not for this role, or not for tokens, or X-CSRF-Token does not fit the session'],
  404: ['NotFound', 'Nothing is found at this address, or it is not for you to see'],
  409: ['Conflict', 'The state of the record forbids it, or the first request with this Idempotency-Key still runs'],
  410: ['Gone', 'It was there and has ended'],
  412: ['Stale', 'If-Match is stale: read the resource again'],
  413: ['TooLarge', 'The body is too large'],
  415: ['MediaType', 'The content type is not taken here'],
  422: ['NotValid', 'What was sent is not valid, each fault with its place; or this Idempotency-Key stood with another body'],
  428: ['MatchMissing', 'If-Match is missing'],
  429: ['TooMany', 'Too many requests; Retry-After says when to come back'],
  503: ['NotReady', 'The database does not answer or is busy; Retry-After says when to come back'],
};
const EXAMPLE_HOUSE = 'https://trials.example';
const kindsOf = (status: number) => ERROR_CATALOGUE.filter((kind) => kind.status === status);
const COMES_BACK: readonly string[] = ['429', '503'];

/** The shared answers, as components. */
export const refusalComponents = (): Responses =>
  Object.fromEntries(
    Object.entries(WORDS).map(([status, [name, description]]) => [
      name,
      {
        description: `${description} (RFC 9457). Codes: ${kindsOf(Number(status))
          .map(({ code }) => code)
          .join(', ')}.`,
        headers: {
          'X-Request-Id': { $ref: '#/components/headers/RequestId' },
          ...(COMES_BACK.includes(status) ? { 'Retry-After': { $ref: '#/components/headers/RetryAfter' } } : {}),
        },
        content: {
          'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' }, example: exampleOf(Number(status), description) },
        },
      },
    ]),
  );

/** An answer of the first kind of problem with that status. */
function exampleOf(status: number, detail: string): Json {
  const kind = kindsOf(status)[0];
  return kind ? problemBody(new Problem(kind, `${detail}.`), '/v1/…', EXAMPLE_HOUSE) : {};
}

/** @throws Error when nothing is said of the status */
export function refusal(status: number): { $ref: string } {
  const [name] = WORDS[status] ?? [];
  if (name === undefined) throw new Error(`Nothing says what ${status} means: api/openapi/refusals.ts`);
  return { $ref: `#/components/responses/${name}` };
}

import { createParamDecorator } from '@nestjs/common';
import type { ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { platformProblems } from '../../errors/platform.errors.js';
import { Problem } from '../../errors/problem.js';

/** Version in the request's If-Match, e.g. "3" → 3; 428 when it is missing (RFC 6585). */
export const IfMatch = createParamDecorator((_: unknown, context: ExecutionContext): number => {
  const header = context.switchToHttp().getRequest<FastifyRequest>().headers['if-match'];
  if (header === undefined)
    throw new Problem(platformProblems['request/if-match-missing'], 'Send If-Match with the ETag that you last read.');
  const version = /^"(\d+)"$/.exec(header)?.[1];
  if (version === undefined)
    throw new Problem(platformProblems['request/if-match-stale'], `If-Match is ${header}; expected one strong ETag such as "3".`);
  return Number(version);
});

/**
 * Refuses a change of something that is no longer as its changer saw it (RFC 9110, 412).
 * @param current version on record
 * @param expected version in If-Match
 */
export function requireSameVersion(current: number, expected: number): void {
  if (current !== expected) {
    throw new Problem(
      platformProblems['request/if-match-stale'],
      `It is at version "${current}" now; your change was made on "${expected}".`,
    );
  }
}

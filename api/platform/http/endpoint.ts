import { applyDecorators, HttpCode, SetMetadata } from '@nestjs/common';
import { RouteConfig } from '@nestjs/platform-fastify';
import { ApiBearerAuth, ApiHeader, ApiOperation, ApiResponse } from '@nestjs/swagger';
import type { ZodType } from 'zod';
import type { Access } from './access.js';
import type { BodyConfig } from './body-rules.js';

export interface EndpointDeclaration {
  /** What it does, a sentence. */
  readonly summary: string;
  readonly allow: Access;
  readonly status?: 200 | 201 | 202 | 204;
  /** Schema of the answer; null for no body or for stored bytes. */
  readonly answer: ZodType | null;
  /** Media type of an answer without schema. */
  readonly mediaType?: string;
  /** Whether the change needs If-Match. */
  readonly needsIfMatch?: boolean;
  /** What it takes beyond 64 KB of JSON: JSON with readings or a list as long, or files as well. */
  readonly takes?: 'readings' | 'files';
  /** Whether it takes a person at a browser: a token must not make what outlives or exceeds it. */
  readonly needsSession?: boolean;
  /** Whether its answer holds a secret, which is kept nowhere. */
  readonly isSecret?: boolean;
  /** Whether it answers however many ask. */
  readonly isUnlimited?: boolean;
}

export const ENDPOINT = Symbol('endpoint');

/** Declares an endpoint: who may call it, what it answers, and its description. A route without it stops the start. */
export function Endpoint(declaration: EndpointDeclaration): MethodDecorator {
  const { summary, allow, status = 200, answer, mediaType, needsIfMatch, takes, isUnlimited } = declaration;
  const body: BodyConfig = { takesReadings: takes !== undefined, takesFiles: takes === 'files' };
  const who = allow === 'anyone' ? 'anyone' : allow === 'signedIn' ? 'anybody signed in' : allow.join(', ');
  const decorators = [
    SetMetadata(ENDPOINT, declaration),
    RouteConfig({ ...body, ...(isUnlimited ? { rateLimit: false } : {}) }),
    HttpCode(status),
    ApiOperation({ summary, description: `${summary} For: ${who}.`, ...(allow === 'anyone' ? { security: [] } : {}) }),
    ApiResponse({
      status,
      description: 'As asked',
      ...(answer ? { standardSchema: answer } : mediaType ? { content: { [mediaType]: { schema: { type: 'string' } } } } : {}),
    }),
    ApiResponse({
      status: '4XX',
      description: 'A problem (RFC 9457)',
      content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
    }),
  ];
  if (allow !== 'anyone') decorators.push(ApiBearerAuth('token'));
  if (needsIfMatch)
    decorators.push(
      ApiHeader({ name: 'If-Match', required: true, description: 'ETag of the resource as last read', schema: { type: 'string' } }),
    );
  return applyDecorators(...decorators);
}

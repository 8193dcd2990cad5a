import { applyDecorators, HttpCode, SetMetadata } from '@nestjs/common';
import { RouteConfig } from '@nestjs/platform-fastify';
import { ApiHeader, ApiOperation, ApiResponse } from '@nestjs/swagger';
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
  /** Schema of JSON that is sent as the bytes that are stored. */
  readonly stored?: ZodType;
  /** Media type of an answer without schema. */
  readonly mediaType?: string;
  /** What such an answer holds, in words. */
  readonly holds?: string;
  /** Whether the change needs If-Match. */
  readonly needsIfMatch?: boolean;
  /** What it takes beyond a little JSON: JSON with long lists, or files as well. */
  readonly takes?: 'much' | 'files';
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
  const { summary, allow, status = 200, answer, stored, mediaType, holds, needsIfMatch, takes, needsSession, isUnlimited } = declaration;
  const schema = answer ?? stored;
  const body: BodyConfig = { takesMuch: takes !== undefined, takesFiles: takes === 'files' };
  const who = allow === 'anyone' ? 'anyone' : allow === 'signedIn' ? 'anybody signed in' : allow.join(', ');
  const credentials = allow === 'anyone' ? [] : [{ session: [] }, ...(needsSession ? [] : [{ token: [] }])];
  const decorators = [
    SetMetadata(ENDPOINT, declaration),
    RouteConfig({ ...body, ...(isUnlimited ? { rateLimit: false } : {}) }),
    HttpCode(status),
    ApiOperation({ summary, description: `${summary} For: ${who}.`, security: credentials }),
    ApiResponse({
      status,
      description: 'As asked',
      ...(schema
        ? { standardSchema: schema }
        : mediaType
          ? { content: { [mediaType]: { schema: { type: 'string', ...(holds !== undefined && { description: holds }) } } } }
          : {}),
    }),
  ];
  if (needsIfMatch)
    decorators.push(
      ApiHeader({ name: 'If-Match', required: true, description: 'ETag of the resource as last read', schema: { type: 'string' } }),
    );
  return applyDecorators(...decorators);
}

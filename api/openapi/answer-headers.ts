import type { OpenAPIObject } from '@nestjs/swagger';
import type { Json } from './components.js';
import { REVALIDATE } from '../platform/http/headers/cache-lifetimes.js';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;
type Headers = NonNullable<NonNullable<OpenAPIObject['components']>['headers']>;

const text = (description: string, example: string) => ({ description, schema: { type: 'string', examples: [example] } }) as const;
const count = (description: string) => ({ description, schema: { type: 'integer', minimum: 0 } }) as const;

/** Headers of answers, as components. */
export const headerComponents = (): Headers => ({
  RequestId: text('Id under which the log tells of the request', '0b0f4f4e-3f0e-4a57-9d1c-6a2f5a9d7c11'),
  Version: text('Version of the resource, to be sent in If-Match with a change', '"3"'),
  Digest: text('SHA-256 of the answer before it is compressed, hex; weak (W/) where it was compressed', '"9f86d081884c7d65…"'),
  CacheControl: text('How long caches may keep it (RFC 9111)', REVALIDATE),
  Link: text('The items that follow, rel="next" (RFC 8288); absent at the end', '</v1/makers?cursor=spruce>; rel="next"'),
  Deprecation: text('Since when nobody should begin to use the address, @ and seconds since 1970 (RFC 9745)', '@1796083200'),
  Sunset: text('Until when the address answers at least (RFC 8594)', 'Fri, 01 Dec 2028 00:00:00 GMT'),
  RetryAfter: { ...count('Seconds to wait [s]') },
  RateLimitLimit: { ...count('Requests that are allowed in a minute') },
  RateLimitRemaining: { ...count('Requests that are left of them') },
  RateLimitReset: { ...count('Seconds until they are all there again [s]') },
});

const header = (name: string) => ({ $ref: `#/components/headers/${name}` });

/** Stored bytes are sent before requests are counted or named. */
const CACHED = { ETag: header('Digest'), 'Cache-Control': header('CacheControl') };
const MADE_FOR_THE_ASKING = {
  'X-Request-Id': header('RequestId'),
  'RateLimit-Limit': header('RateLimitLimit'),
  'RateLimit-Remaining': header('RateLimitRemaining'),
  'RateLimit-Reset': header('RateLimitReset'),
};

/** Says of the answer of an operation which headers come with it. */
export function answerHeaders(operation: Operation, isCached: boolean, schemas: Readonly<Record<string, Json>>): void {
  for (const [status, response] of Object.entries(operation.responses)) {
    if (!status.startsWith('2') || !response || !('description' in response)) continue;
    const fields = fieldsOf(response.content?.['application/json']?.schema as Json | undefined, schemas);
    response.headers = {
      ...(isCached ? CACHED : MADE_FOR_THE_ASKING),
      ...(!isCached && 'version' in fields ? { ETag: header('Version') } : {}),
      ...('nextCursor' in fields ? { Link: header('Link') } : {}),
    };
  }
}

function fieldsOf(schema: Json | undefined, schemas: Readonly<Record<string, Json>>): Json {
  const name = (schema?.['$ref'] as string | undefined)?.split('/').at(-1);
  const resolved = name === undefined ? schema : schemas[name];
  return (resolved?.['properties'] ?? {}) as Json;
}

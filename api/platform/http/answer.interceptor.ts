import { Injectable } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { map } from 'rxjs';
import type { Observable } from 'rxjs';
import { ENDPOINT } from './endpoint.js';
import type { EndpointDeclaration } from './endpoint.js';

/** The same list from its next item on (RFC 8288). */
function linkToNext(address: string, cursor: string): string {
  const url = new URL(address, 'http://here');
  url.searchParams.set('cursor', cursor);
  return `<${url.pathname}${url.search}>; rel="next"`;
}

/** Serialises every answer through its declared schema, lets nobody keep what is not for all, gives a resource with a version its strong ETag, and a list the link to what follows. */
@Injectable()
export class AnswerInterceptor implements NestInterceptor {
  constructor(private readonly reflector: Reflector) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    const declaration = this.reflector.get<EndpointDeclaration>(ENDPOINT, context.getHandler());
    if (declaration.allow !== 'anyone' || http.getRequest<FastifyRequest>().method !== 'GET')
      http.getResponse<FastifyReply>().header('Cache-Control', 'no-store');
    return next.handle().pipe(
      map((answer: unknown) => {
        if (!declaration.answer) return answer;
        const parsed = declaration.answer.parse(answer) as { version?: unknown; nextCursor?: unknown };
        const reply = http.getResponse<FastifyReply>();
        if (typeof parsed.version === 'number') reply.header('ETag', `"${parsed.version}"`);
        if (typeof parsed.nextCursor === 'string')
          reply.header('Link', linkToNext(http.getRequest<FastifyRequest>().url, parsed.nextCursor));
        return parsed;
      }),
    );
  }
}

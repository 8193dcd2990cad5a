import { Injectable } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyReply } from 'fastify';
import { map } from 'rxjs';
import type { Observable } from 'rxjs';
import { ENDPOINT } from './endpoint.js';
import type { EndpointDeclaration } from './endpoint.js';

/** Serialises every answer through its declared schema and gives a resource with a version its strong ETag. */
@Injectable()
export class AnswerInterceptor implements NestInterceptor {
  constructor(private readonly reflector: Reflector) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const declaration = this.reflector.get<EndpointDeclaration>(ENDPOINT, context.getHandler());
    return next.handle().pipe(
      map((answer: unknown) => {
        if (!declaration.answer) return answer;
        const parsed = declaration.answer.parse(answer) as { version?: unknown };
        if (typeof parsed.version === 'number') context.switchToHttp().getResponse<FastifyReply>().header('ETag', `"${parsed.version}"`);
        return parsed;
      }),
    );
  }
}

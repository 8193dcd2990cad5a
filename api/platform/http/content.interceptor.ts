import { Injectable } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Readable } from 'node:stream';
import type { Observable } from 'rxjs';
import { contentFaults } from './problems/content-faults.js';
import { notValid } from './validation.js';

/** Refuses what no input may hold, in one place for every route; after the guard, so that nobody unknown makes us look. */
@Injectable()
export class ContentInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const { body, params, query } = context.switchToHttp().getRequest<FastifyRequest>();
    const faults = [params, query, body instanceof Readable ? null : body].flatMap(contentFaults);
    if (faults.length > 0) throw notValid(faults);
    return next.handle();
  }
}

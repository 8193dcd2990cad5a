import { Catch, HttpException, Inject, Logger } from '@nestjs/common';
import type { ArgumentsHost, ExceptionFilter } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { CONFIG } from '../../../config.js';
import type { Config } from '../../../config.js';
import { brokenRule, isBusy, isDuplicate, isFrozen, isRetryable, isUnreachable, isUnstorable } from '../../database/database-failure.js';
import { platformProblems as known } from '../../errors/platform.errors.js';
import { Problem } from '../../errors/problem.js';
import type { ProblemKind } from '../../errors/problem.js';
import { PROBLEM_TYPE, problemBody } from './problem-body.js';

const KIND_OF_STATUS: Readonly<Record<number, ProblemKind>> = {
  400: known['request/malformed'],
  401: known['access/not-signed-in'],
  403: known['access/forbidden'],
  404: known['request/not-found'],
  405: known['request/not-found'],
  406: known['request/not-found'],
  413: known['request/too-large'],
  415: known['request/media-type'],
  429: known['request/too-many'],
};

/** Turns whatever was thrown into application/problem+json; only our own failures are logged. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  private readonly logger = new Logger('http');

  constructor(@Inject(CONFIG) private readonly config: Config) {}

  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const problem = isCutOff(error, request) ? CUT_OFF : toProblem(error);
    if (problem.kind.status >= 500)
      this.logger.error(
        `${request.method} ${request.routeOptions.url ?? 'no such route'} (${request.id}): ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
      );
    void http
      .getResponse<FastifyReply>()
      .status(problem.kind.status)
      .headers({ ...problem.headers, 'Cache-Control': 'no-store' })
      .type(PROBLEM_TYPE)
      .send(problemBody(problem, request.url, this.config.PUBLIC_URL));
  }
}

const CUT_OFF = new Problem(known['request/malformed'], 'The connection ended before all of the request was here. Send it again.');

/** What reading a request ends with when its client hangs up, or is too slow. */
const HUNG_UP = ['ECONNRESET', 'ERR_STREAM_PREMATURE_CLOSE'];

/** Before all of the request was here: that is no failure of ours, and no news of the database, whose connections break by the same code. */
const isCutOff = (error: unknown, { raw }: FastifyRequest): boolean =>
  raw.destroyed && !raw.complete && HUNG_UP.includes((error as { code?: string } | undefined)?.code ?? '');

/** How the reader of forms says that what it was given is none; it gives no code. */
const BROKEN_FORM = /multipart data|Multipart: /i;

/** A rule of the record by its sentence; where it has a name alone, by the words of that. */
const ruleInWords = (rule: string): string => {
  const words = rule.replace(/^[a-z_]+: /, '').replaceAll('_', ' ');
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
};

function toProblem(error: unknown): Problem {
  if (error instanceof Problem) return error;
  if (error instanceof Error && BROKEN_FORM.test(error.message))
    return new Problem(known['request/malformed'], 'The form cannot be read to its end. Send multipart/form-data with one file, whole.');
  if (isUnreachable(error)) return new Problem(known['server/not-ready'], 'The database does not answer.', [], { 'Retry-After': '5' });
  if (isFrozen(error))
    return new Problem(
      known['server/not-ready'],
      'The database takes no changes now: it is read-only or its disk is full. Nothing was stored.',
      [],
      {
        'Retry-After': '30',
      },
    );
  const rule = brokenRule(error);
  if (rule !== null) return new Problem(known['record/rule-broken'], ruleInWords(rule));
  if (isDuplicate(error)) return new Problem(known['record/already-exists']);
  if (isRetryable(error) || isBusy(error)) return new Problem(known['record/busy'], undefined, [], { 'Retry-After': '1' });
  if (isUnstorable(error))
    return new Problem(
      known['request/not-valid'],
      'A value cannot be kept on record: a number beyond any measure, or a character that is none. Nothing was stored. Type it again.',
    );
  const status = error instanceof HttpException ? error.getStatus() : ((error as { statusCode?: number }).statusCode ?? 500);
  const kind = KIND_OF_STATUS[status];
  return kind ? new Problem(kind, (error as Error).message) : new Problem(known['server/failed']);
}

import { Injectable } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { createHash } from 'node:crypto';
import type { Hash } from 'node:crypto';
import { Readable, Transform } from 'node:stream';
import { finished } from 'node:stream/promises';
import { from, lastValueFrom } from 'rxjs';
import type { Observable } from 'rxjs';
import { Clock } from '../clock/clock.js';
import { Database } from '../database/database.js';
import { isDuplicate } from '../database/database-failure.js';
import { platformProblems } from '../errors/platform.errors.js';
import { Problem } from '../errors/problem.js';
import type { RequestWithActor } from './access.js';

interface Place {
  readonly accountId: string;
  readonly key: string;
}

/** The first answer to a POST with an Idempotency-Key is kept and replayed (IETF draft); a failed first attempt frees the key. */
@Injectable()
export class IdempotencyInterceptor implements NestInterceptor {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> | Promise<Observable<unknown>> {
    const request = context.switchToHttp().getRequest<RequestWithActor>();
    const key = request.headers['idempotency-key'];
    if (request.method !== 'POST' || typeof key !== 'string' || !request.actor) return next.handle();
    return this.once({ accountId: request.actor.accountId, key }, request, context.switchToHttp().getResponse<FastifyReply>(), next);
  }

  private async once(place: Place, request: RequestWithActor, reply: FastifyReply, next: CallHandler): Promise<Observable<unknown>> {
    const fingerprint = fingerprintOf(request);
    if (!(await this.claim(place))) return from([await this.replay(place, await fingerprint(), reply)]);
    try {
      const answer: unknown = await lastValueFrom(next.handle());
      const headers = { etag: reply.getHeader('etag') ?? null, location: reply.getHeader('location') ?? null };
      await this.database.client.idempotentAnswer.update({
        where: { accountId_key: place },
        data: { requestDigest: await fingerprint(), status: reply.statusCode, body: JSON.stringify(answer ?? null), headers },
      });
      return from([answer]);
    } catch (error) {
      await this.database.client.idempotentAnswer.delete({ where: { accountId_key: place } });
      throw error;
    }
  }

  private async claim(place: Place): Promise<boolean> {
    try {
      await this.database.client.idempotentAnswer.create({ data: { ...place, requestDigest: '', startedAt: this.clock.now() } });
      return true;
    } catch (error) {
      if (isDuplicate(error)) return false;
      throw error;
    }
  }

  private async replay(place: Place, digest: string, reply: FastifyReply): Promise<unknown> {
    const first = await this.database.client.idempotentAnswer.findUnique({ where: { accountId_key: place } });
    if (!first || first.status === null) throw new Problem(platformProblems['request/key-busy'], undefined, [], { 'Retry-After': '1' });
    if (first.requestDigest !== digest) throw new Problem(platformProblems['request/key-reused']);
    for (const [name, value] of Object.entries((first.headers ?? {}) as Record<string, string | null>))
      if (value !== null) reply.header(name, value);
    reply.status(first.status).header('Idempotency-Replayed', 'true');
    return JSON.parse(first.body ?? 'null') as unknown;
  }
}

/** Gives the digest of method, address and body; a stream, and the file of a form, is digested as it is read. */
function fingerprintOf(request: RequestWithActor): () => Promise<string> {
  const hash = createHash('sha256').update(`${request.method} ${request.url}\n`);
  if (request.isMultipart()) return ofForm(request, hash);
  const body = request.body;
  if (!(body instanceof Readable)) {
    const digest = hash.update(JSON.stringify(body ?? null)).digest('hex');
    return () => Promise.resolve(digest);
  }
  const copy = digesting(hash, body);
  request.body = copy;
  return () => digestOf(hash, copy);
}

/** The file of a form is what counts of it; whoever asks for it gets a copy that is digested on its way. */
function ofForm(request: RequestWithActor, hash: Hash): () => Promise<string> {
  const take = request.file.bind(request);
  let copy: Transform | undefined;
  request.file = async (options) => {
    const part = await take(options);
    if (!part) return part;
    const { file } = part;
    copy = digesting(hash, file);
    // The server says so there when it has cut a file at the limit.
    const told = Object.defineProperties(copy, { truncated: { get: () => file.truncated }, bytesRead: { get: () => file.bytesRead } });
    return { ...part, file: told as Transform & typeof file };
  };
  return async () => {
    if (!copy) await request.file();
    return copy ? digestOf(hash, copy) : hash.digest('hex');
  };
}

function digesting(hash: Hash, bytes: Readable): Transform {
  const copy = new Transform({
    transform(chunk: Buffer, _encoding, done) {
      hash.update(chunk);
      done(null, chunk);
    },
  });
  bytes.on('error', (error) => copy.destroy(error)).pipe(copy);
  return copy;
}

async function digestOf(hash: Hash, copy: Transform): Promise<string> {
  if (!copy.readableEnded) await finished(copy.resume());
  return hash.digest('hex');
}

import { Injectable } from '@nestjs/common';
import type { CallHandler, ExecutionContext, NestInterceptor } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { Reflector } from '@nestjs/core';
import { createHash } from 'node:crypto';
import type { Hash } from 'node:crypto';
import { pipeline, Readable, Transform } from 'node:stream';
import { finished } from 'node:stream/promises';
import { from, lastValueFrom } from 'rxjs';
import type { Observable } from 'rxjs';
import { Database } from '../../database/database.js';
import { platformProblems } from '../../errors/platform.errors.js';
import { Problem } from '../../errors/problem.js';
import type { RequestWithActor } from '../access.js';
import { ENDPOINT } from '../endpoint.js';
import type { EndpointDeclaration } from '../endpoint.js';
import { IdempotentAnswersStore, LEASE_MS } from './idempotent-answers.store.js';
import type { Place } from './idempotent-answers.store.js';

/** The first answer to a POST with an Idempotency-Key is kept and replayed (IETF draft); a failed first attempt frees the key. */
@Injectable()
export class IdempotencyInterceptor implements NestInterceptor {
  constructor(
    private readonly reflector: Reflector,
    private readonly database: Database,
    private readonly answers: IdempotentAnswersStore,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> | Promise<Observable<unknown>> {
    const request = context.switchToHttp().getRequest<RequestWithActor>();
    const key = request.headers['idempotency-key'];
    if (request.method !== 'POST' || typeof key !== 'string' || !request.actor) return next.handle();
    if (!/^[\x21-\x7e]{1,200}$/.test(key)) throw new Problem(platformProblems['request/key-malformed']);
    const { isSecret = false } = this.reflector.get<EndpointDeclaration>(ENDPOINT, context.getHandler());
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return this.once({ place: { accountId: request.actor.accountId, key }, isSecret }, request, reply, next);
  }

  private async once(keyed: Keyed, request: RequestWithActor, reply: FastifyReply, next: CallHandler): Promise<Observable<unknown>> {
    const fingerprint = fingerprintOf(request);
    const attempt = await this.answers.claim(keyed.place);
    if (attempt === null) return from([await this.replay(keyed, await fingerprint(), reply)]);
    const renewing = setInterval(() => void this.answers.renew(attempt).catch(() => undefined), LEASE_MS / 3);
    try {
      const answer = await this.database.withAnswer<unknown>(
        () => lastValueFrom(next.handle()),
        async (tx, body) => {
          const headers = { etag: headerOf(reply, 'etag'), location: headerOf(reply, 'location') };
          const kept = keyed.isSecret ? null : JSON.stringify(body ?? null);
          await this.answers.keep(tx, attempt, { requestDigest: await fingerprint(), status: reply.statusCode, body: kept, headers });
        },
      );
      return from([answer]);
    } catch (error) {
      await this.answers.letGo(attempt);
      throw error;
    } finally {
      clearInterval(renewing);
    }
  }

  private async replay({ place, isSecret }: Keyed, digest: string, reply: FastifyReply): Promise<unknown> {
    const first = await this.answers.find(place);
    if (!first || first.status === null) throw new Problem(platformProblems['request/key-busy'], undefined, [], { 'Retry-After': '1' });
    if (first.requestDigest !== digest) throw new Problem(platformProblems['request/key-reused']);
    if (isSecret) throw new Problem(platformProblems['request/secret-not-kept']);
    for (const [name, value] of Object.entries((first.headers ?? {}) as Record<string, string | null>))
      if (value !== null) reply.header(name, value);
    reply.status(first.status).header('Idempotency-Replayed', 'true');
    return JSON.parse(first.body ?? 'null') as unknown;
  }
}

interface Keyed {
  readonly place: Place;
  /** Whether the answer holds a secret, which is shown once. */
  readonly isSecret: boolean;
}

const headerOf = (reply: FastifyReply, name: string): string | null => {
  const value = reply.getHeader(name);
  return typeof value === 'string' ? value : null;
};

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
  // Also of bytes that ended before this listens, as those of a form that is cut off: the copy ends with what they ended with.
  pipeline(bytes, copy, () => undefined);
  return copy;
}

async function digestOf(hash: Hash, copy: Transform): Promise<string> {
  if (!copy.readableEnded) await finished(copy.resume());
  return hash.digest('hex');
}

import { Injectable } from '@nestjs/common';
import { randomUUID } from 'node:crypto';
import { Clock } from '../../clock/clock.js';
import { Database } from '../../database/database.js';
import type { Transaction } from '../../database/database.js';
import { Problem } from '../../errors/problem.js';
import { platformProblems } from '../../errors/platform.errors.js';

/** How long a key stands for its first answer. */
export const KEPT_HOURS = 24;
/** An attempt renews its lease while it works; whoever died does not, and after this time the key is free. */
export const LEASE_MS = 30_000;

export interface Place {
  readonly accountId: string;
  readonly key: string;
}

export interface KeptAnswer {
  readonly requestDigest: string;
  readonly status: number;
  /** Null where it held a secret. */
  readonly body: string | null;
  readonly headers: Record<string, string | null>;
}

/** The only writer of the answers to requests with a key. */
@Injectable()
export class IdempotentAnswersStore {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @returns the attempt that holds the key now; null when another holds it or it has its answer */
  async claim({ accountId, key }: Place): Promise<string | null> {
    const attempt = randomUUID();
    const now = this.clock.now();
    const taken = await this.database.client.$executeRaw`
      INSERT INTO idempotent_answer AS a (account_id, key, request_digest, started_at, attempt)
      VALUES (${accountId}::uuid, ${key}, '', ${now}, ${attempt}::uuid)
      ON CONFLICT (account_id, key) DO UPDATE SET
        request_digest = '', started_at = ${now}, attempt = ${attempt}::uuid, status = NULL, body = NULL, headers = NULL
      WHERE (a.status IS NULL AND a.started_at < ${new Date(now.getTime() - LEASE_MS)}) OR a.started_at < ${this.oldest()}`;
    return taken === 1 ? attempt : null;
  }

  renew(attempt: string) {
    return this.database.client.idempotentAnswer.updateMany({ where: { attempt, status: null }, data: { startedAt: this.clock.now() } });
  }

  /**
   * Keeps the answer of an attempt that still holds its key.
   * @throws Problem 409 when its lease was over and another has it: what this one did must not stay
   */
  async keep(tx: Transaction, attempt: string, answer: KeptAnswer): Promise<void> {
    const { count } = await tx.idempotentAnswer.updateMany({ where: { attempt, status: null }, data: answer });
    if (count === 0) throw new Problem(platformProblems['request/key-busy'], undefined, [], { 'Retry-After': '1' });
  }

  letGo(attempt: string) {
    return this.database.client.idempotentAnswer.deleteMany({ where: { attempt, status: null } });
  }

  find(place: Place) {
    return this.database.client.idempotentAnswer.findUnique({ where: { accountId_key: place } });
  }

  /** Takes away the answers that no key stands for any more. */
  forgetOld() {
    return this.database.client.idempotentAnswer.deleteMany({ where: { startedAt: { lt: this.oldest() } } });
  }

  private oldest(): Date {
    return new Date(this.clock.now().getTime() - KEPT_HOURS * 3_600_000);
  }
}

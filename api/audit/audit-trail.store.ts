import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { Transaction } from '../platform/database/database.js';

export interface AuditEntry {
  /** Account that did it; null for the program itself. */
  readonly actorId: string | null;
  /** What happened, in the past: submission.accepted */
  readonly action: string;
  readonly objectType: string;
  /** Reference, slug or id of the object. */
  readonly objectId: string;
  readonly before?: object | null;
  readonly after?: object | null;
}

/** Writes who did what, in the transaction that does it, so that neither is there without the other. */
@Injectable()
export class AuditTrail {
  constructor(private readonly clock: Clock) {}

  async record(tx: Transaction, entry: AuditEntry): Promise<void> {
    await this.recordAll(tx, [entry]);
  }

  /** Many at once, in one statement. */
  async recordAll(tx: Transaction, entries: readonly AuditEntry[]): Promise<void> {
    const at = this.clock.now();
    await tx.auditEvent.createMany({
      data: entries.map(({ before, after, ...event }) => ({
        ...event,
        at,
        ...(before ? { before: toJson(before) } : {}),
        ...(after ? { after: toJson(after) } : {}),
      })),
    });
  }
}

const toJson = (value: object): Prisma.InputJsonValue => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

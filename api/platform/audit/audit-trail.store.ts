import { Injectable } from '@nestjs/common';
import { Clock } from '../clock/clock.js';
import type { Transaction } from '../database/database.js';
import { insertRows, tableRows } from '../database/insert-rows.js';
import { uuid7 } from '../identifiers/uuid7.js';

export interface AuditEntry {
  /** Account that did it; null for the program itself. */
  readonly actorId: string | null;
  /** What happened, in the past, as noun.verb */
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

  async record(tx: Transaction, { actorId, action, objectType, objectId, before = null, after = null }: AuditEntry): Promise<void> {
    await tx.$executeRaw`
      INSERT INTO "audit_event" ("id", "actor_id", "action", "object_type", "object_id", "at", "before", "after")
      VALUES (${uuid7()}::uuid, ${actorId}::uuid, ${action}, ${objectType}, ${objectId}, ${this.clock.now()},
        ${jsonOf(before)}::jsonb, ${jsonOf(after)}::jsonb)`;
  }

  /** Many at once, in one statement. */
  async recordAll(tx: Transaction, entries: readonly AuditEntry[]): Promise<void> {
    const at = this.clock.now();
    const rows = entries.map(({ before = null, after = null, ...event }) => ({ id: uuid7(), ...event, at, before, after }));
    await insertRows(tx, tableRows('audit_event', rows));
  }
}

const jsonOf = (value: object | null): string | null => (value === null ? null : JSON.stringify(value));

import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { among } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma, SupersededRow } from '../platform/database/generated/client.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';
import { KeyReadings } from './key-readings.store.js';
import { notValid } from '../platform/http/validation.js';

export interface RowBefore {
  readonly kind: string;
  /** Id of the row. */
  readonly objectId: string;
  readonly was: object;
  readonly reason: string | undefined;
  readonly byId: string;
}

/** What rests on a row, by reference. */
export interface Rested {
  readonly submissions: readonly string[];
  readonly editions: readonly string[];
}

const MOST_NAMED = 20;

/** The only writer of what rows said before; written in the transaction that changes the row, the database looks for it there. */
@Injectable()
export class SupersededRows {
  constructor(
    private readonly database: Database,
    private readonly keyReadings: KeyReadings,
    private readonly clock: Clock,
  ) {}

  /**
   * Before a row is changed: nothing, while nothing rests on it; else keeps what it said beside it.
   * @throws Problem request/not-valid where something rests on it and no reason is given
   */
  async keep(tx: Transaction, { reason, ...row }: RowBefore, rested: Rested): Promise<void> {
    const { submissions, editions } = rested;
    if (submissions.length === 0) return;
    if (reason === undefined) {
      const named = submissions.slice(0, MOST_NAMED).join(', ') + (submissions.length > MOST_NAMED ? ' …' : '');
      const detail = `${submissions.length === 1 ? 'One submission' : `${submissions.length} submissions`} of ${editions.join(', ')} ${submissions.length === 1 ? 'rests' : 'rest'} on it (${named}). Say why it changes: what stood there is kept beside it.`;
      throw notValid([{ pointer: '/reason', detail, code: 'reason_needed' }]);
    }
    // Who reads what rests on a row reads what the spools of these are.
    await this.keyReadings.note({ accountId: row.byId }, 'key', { references: submissions }, tx);
    const was = JSON.parse(JSON.stringify(row.was)) as Prisma.InputJsonObject;
    await tx.supersededRow.create({
      data: { id: uuid7(), ...row, was, reason, rested: { submissions: [...submissions], editions: [...editions] }, at: this.clock.now() },
    });
  }

  /** What rows said before, oldest first. */
  async of(objectIds: readonly string[], reader: Transaction = this.database.client) {
    const rows = await reader.supersededRow.findMany({ where: { objectId: among(objectIds) }, orderBy: { id: 'asc' } });
    return rows.map(toFormer);
  }

  /** What was superseded since a moment, oldest first. */
  async since(moment: Date) {
    const rows = await this.database.client.supersededRow.findMany({ where: { at: { gt: moment } }, orderBy: { id: 'asc' } });
    return rows.map(toFormer);
  }

  /** What rows said before on which submissions of an edition rested, oldest first, each with the id of its row. */
  async restedOnIn(edition: string) {
    const rows = await this.database.client.supersededRow.findMany({
      where: { rested: { path: ['editions'], array_contains: [edition] } },
      orderBy: { id: 'asc' },
    });
    return rows.map((row) => ({ objectId: row.objectId, ...toFormer(row) }));
  }
}

const toFormer = ({ kind, was, reason, rested, at }: SupersededRow) => ({
  kind,
  was: was as Record<string, unknown>,
  reason,
  rested: rested as unknown as Rested,
  at: at.toISOString(),
});

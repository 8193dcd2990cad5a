import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';

interface Step {
  readonly id: string;
  readonly slug: string;
}

/** Rows of editions, for features whose own rows point at them or that keep one as it is. */
@Injectable()
export class EditionRows {
  constructor(private readonly database: Database) {}

  /** Row of an edition; null when there is none. */
  async idOf(slug: string): Promise<string | null> {
    return (await this.database.client.edition.findUnique({ where: { slug }, select: { id: true } }))?.id ?? null;
  }

  /** An edition, kept as it is until the end of the transaction; null when there is none. */
  async hold(tx: Transaction, slug: string) {
    const rows = await tx.$queryRaw<{ id: string; state: string; blindKeyDigest: string | null }[]>`
      SELECT "id"::text, "state", "blind_key_digest" AS "blindKeyDigest" FROM "edition" WHERE "slug" = ${slug} FOR UPDATE`;
    return rows[0] ?? null;
  }

  /** Ids of those that are open. */
  async open(): Promise<string[]> {
    return (await this.database.client.edition.findMany({ where: { state: 'open' }, select: { id: true } })).map(({ id }) => id);
  }

  /** Ids of the variants entered in those that are open. */
  async enteredNow(): Promise<string[]> {
    const rows = await this.database.client.entry.findMany({ where: { edition: { state: 'open' } }, select: { variantId: true } });
    return rows.map(({ variantId }) => variantId);
  }

  /** Those whose next step is due: to be opened, to be closed, closed; by closing day. */
  async due(today: Date): Promise<Readonly<Record<'toOpen' | 'toClose' | 'closed', Step[]>>> {
    const rows = await this.database.client.edition.findMany({
      where: { OR: [{ state: 'planned', opensOn: { lte: today } }, { state: 'open', closesOn: { lt: today } }, { state: 'closed' }] },
      select: { id: true, slug: true, state: true },
      orderBy: [{ closesOn: 'asc' }, { slug: 'asc' }],
    });
    const inState = (state: string) => rows.filter((row) => row.state === state);
    return { toOpen: inState('planned'), toClose: inState('open'), closed: inState('closed') };
  }
}

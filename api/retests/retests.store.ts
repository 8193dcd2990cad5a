import { Injectable } from '@nestjs/common';
import { SpoolsStore } from '../catalogue/spools/spools.store.js';
import type { SpoolSource } from '../contract/spool-sources.js';
import type { Transaction } from '../platform/database/database.js';
import { Prisma } from '../platform/database/generated/client.js';

export interface NewDraw {
  readonly editionId: string;
  readonly seed: string;
  readonly percent: number;
  readonly from: readonly string[];
  readonly byId: string;
  readonly at: Date;
}

/** The only writer of draws and of what was drawn. */
@Injectable()
export class RetestsStore {
  constructor(private readonly spools: SpoolsStore) {}

  /** The edition, locked, with its draw; null when there is none. */
  async lockEdition(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM "edition" WHERE "slug" = ${slug} FOR UPDATE`;
    return tx.edition.findUnique({ where: { slug }, include: { retestDraw: true } });
  }

  /** Accepted submissions of an edition that were pulled and are no re-tests themselves. */
  candidates(tx: Transaction, editionId: string) {
    return tx.submission.findMany({
      where: {
        editionId,
        state: 'accepted',
        spool: { retest: null, retiredOn: null },
        revision: { gt: 0 },
        NOT: { methodVersion: { limits: { path: ['timeToBreakS'], equals: Prisma.AnyNull } } },
      },
      include: { spool: true },
      orderBy: { reference: 'asc' },
    });
  }

  async draw(tx: Transaction, draw: NewDraw): Promise<string> {
    const { id } = await tx.retestDraw.create({ data: { ...draw, from: [...draw.from] } });
    return id;
  }

  /** The same spool under another code. */
  async putBack(
    tx: Transaction,
    drawId: string,
    original: Awaited<ReturnType<RetestsStore['candidates']>>[number],
    blindCode: string,
  ): Promise<void> {
    const { variantId, source, obtainedOn, place, lot, lengthM } = original.spool;
    const spool = await this.spools.create(tx, {
      blindCode,
      variantId,
      source: source as SpoolSource,
      obtainedOn,
      place,
      lot,
      lengthM: lengthM?.toString() ?? null,
    });
    await tx.retest.create({ data: { spoolId: spool.id, drawId, submissionId: original.id } });
  }
}

import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';

export interface NewDraw {
  readonly editionId: string;
  readonly seed: string;
  readonly percent: number;
  readonly from: readonly string[];
  readonly byId: string;
  readonly at: Date;
}

/** The only writer of draws. */
@Injectable()
export class RetestsStore {
  /** The edition, locked, with its draw; null when there is none. */
  async lockEdition(tx: Transaction, slug: string) {
    await tx.$queryRaw`SELECT 1 FROM "edition" WHERE "slug" = ${slug} FOR UPDATE`;
    return tx.edition.findUnique({ where: { slug }, include: { retestDraw: true } });
  }

  async draw(tx: Transaction, draw: NewDraw): Promise<string> {
    const { id } = await tx.retestDraw.create({ data: { ...draw, from: [...draw.from] } });
    return id;
  }
}

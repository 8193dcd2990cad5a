import { Injectable } from '@nestjs/common';
import { EditionRows } from '../editions/edition-rows.read-model.js';
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
  constructor(private readonly editions: EditionRows) {}

  /** The edition, locked, with its draw; null when there is none. */
  async lockEdition(tx: Transaction, slug: string) {
    const edition = await this.editions.hold(tx, slug);
    return edition && { ...edition, retestDraw: await tx.retestDraw.findUnique({ where: { editionId: edition.id } }) };
  }

  async draw(tx: Transaction, draw: NewDraw): Promise<string> {
    const { id } = await tx.retestDraw.create({ data: { ...draw, from: [...draw.from] } });
    return id;
  }
}

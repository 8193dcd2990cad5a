import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { Database } from '../platform/database/database.js';

/** Who has a tie to which maker. */
@Injectable()
export class InterestsReadModel {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  async has(accountId: string, makerId: string): Promise<boolean> {
    return (await this.database.client.declaredInterest.count({ where: { accountId, makerId } })) > 0;
  }

  /** Ids of the makers that somebody has a tie to. */
  async makersOf(accountId: string): Promise<string[]> {
    const rows = await this.database.client.declaredInterest.findMany({ where: { accountId }, select: { makerId: true } });
    return rows.map(({ makerId }) => makerId);
  }

  /** As declared, oldest first, with the slugs of the makers. */
  async list(accountId: string) {
    const rows = await this.database.client.declaredInterest.findMany({ where: { accountId }, orderBy: { declaredAt: 'asc' } });
    const makers = await this.catalogue.makerSlugs(rows.map(({ makerId }) => makerId));
    return rows.map(({ makerId, words, declaredAt }) => ({ maker: makers.of(makerId), words, declaredAt: declaredAt.toISOString() }));
  }
}

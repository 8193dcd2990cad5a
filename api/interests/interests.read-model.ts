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

  /** Whether somebody has a tie to the maker of what was tested, whichever spool it was. */
  async hasIn(accountId: string, reference: string): Promise<boolean> {
    const rows = await this.database.client.$queryRaw<object[]>`
      SELECT 1 FROM "submission" s JOIN "spool" p ON p."id" = s."spool_id" JOIN "variant" v ON v."id" = p."variant_id"
      JOIN "line" l ON l."id" = v."line_id" JOIN "declared_interest" i ON i."maker_id" = l."maker_id"
      WHERE s."reference" = ${reference} AND i."account_id" = ${accountId}::uuid`;
    return rows.length > 0;
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

import { Injectable } from '@nestjs/common';
import { SupersededRows } from '../platform/audit/superseded.store.js';
import { Database } from '../platform/database/database.js';
import { toLine, toMaker, toVariant } from './catalogue-rows.js';
import type { PageQuery } from '../contract/endpoints/catalogue.js';
import { after, toPage } from './page.js';
import { withFormer } from './with-former.js';

const WITH_MAKER = { maker: true } as const;
const WITH_NAMES = { claims: true, line: { include: WITH_MAKER } } as const;
const slugOf = (row: { slug: string }): string => row.slug;

/** Makers, lines and variants for the desk, by slug. */
@Injectable()
export class CataloguePages {
  constructor(
    private readonly database: Database,
    private readonly superseded: SupersededRows,
  ) {}

  async makers(page: PageQuery) {
    return toPage(await this.database.client.maker.findMany(after('slug', page)), page.limit, slugOf, toMaker);
  }

  async maker(slug: string) {
    const row = await this.database.client.maker.findUnique({ where: { slug } });
    return row && withFormer(toMaker(row), await this.superseded.of([row.id]));
  }

  async lines(page: PageQuery) {
    return toPage(await this.database.client.line.findMany({ ...after('slug', page), include: WITH_MAKER }), page.limit, slugOf, toLine);
  }

  async line(slug: string) {
    const row = await this.database.client.line.findUnique({ where: { slug }, include: WITH_MAKER });
    return row && withFormer(toLine(row), await this.superseded.of([row.id]));
  }

  async variants(page: PageQuery) {
    return toPage(
      await this.database.client.variant.findMany({ ...after('slug', page), include: WITH_NAMES }),
      page.limit,
      slugOf,
      toVariant,
    );
  }

  async variant(slug: string) {
    const row = await this.database.client.variant.findUnique({ where: { slug }, include: WITH_NAMES });
    return row && withFormer(toVariant(row), await this.superseded.of([row.id, ...row.claims.map(({ id }) => id)]));
  }
}

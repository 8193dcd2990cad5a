import { Injectable } from '@nestjs/common';
import { KeyReadings } from '../audit/key-readings.store.js';
import { SupersededRows } from '../audit/superseded.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { toLine, toMaker, toVariant } from './catalogue-rows.js';
import type { PageQuery } from '../contract/endpoints/catalogue.js';
import { after, toPage } from './page-of-rows.js';
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
    private readonly keyReadings: KeyReadings,
  ) {}

  async makers(page: PageQuery) {
    return toPage(await this.database.client.maker.findMany(after('slug', page)), page.limit, slugOf, toMaker);
  }

  async maker(reader: Actor, slug: string) {
    const row = await this.database.client.maker.findUnique({ where: { slug } });
    return row && this.withFormer(reader, toMaker(row), [row.id]);
  }

  async lines(page: PageQuery) {
    return toPage(await this.database.client.line.findMany({ ...after('slug', page), include: WITH_MAKER }), page.limit, slugOf, toLine);
  }

  async line(reader: Actor, slug: string) {
    const row = await this.database.client.line.findUnique({ where: { slug }, include: WITH_MAKER });
    return row && this.withFormer(reader, toLine(row), [row.id]);
  }

  async variants(page: PageQuery) {
    return toPage(
      await this.database.client.variant.findMany({ ...after('slug', page), include: WITH_NAMES }),
      page.limit,
      slugOf,
      toVariant,
    );
  }

  async variant(reader: Actor, slug: string) {
    const row = await this.database.client.variant.findUnique({ where: { slug }, include: WITH_NAMES });
    return row && this.withFormer(reader, toVariant(row), [row.id, ...row.claims.map(({ id }) => id)]);
  }

  /** What rested on a row names submissions, and so tells what their spools are: editors read it, and are known to have. */
  private async withFormer<Row extends object>(reader: Actor, row: Row, ids: readonly string[]) {
    if (!reader.roles.includes('editor')) return row;
    const former = await this.superseded.of(ids);
    await this.keyReadings.note(reader, 'key', { references: former.flatMap(({ rested }) => rested.submissions) });
    return withFormer(row, former);
  }
}

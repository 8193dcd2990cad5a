import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../../accounts/accounts.read-model.js';
import { KeyReadings } from '../../audit/key-readings.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { among } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import type { Prisma } from '../../platform/database/generated/client.js';
import type { Actor } from '../../platform/http/access.js';
import type { PageQuery } from '../../contract/endpoints/catalogue.js';
import { after, toPage } from '../page-of-rows.js';
import { withFormer } from '../with-former.js';
import { toRetired } from '../../contract/retired.js';
import type { SpoolSource } from '../../contract/spool-sources.js';
import type { SpoolResponse } from '../../contract/endpoints/spools.js';

const WITH_IDENTITIES = { variant: true, reidentifications: { orderBy: [{ at: 'asc' }, { id: 'asc' }] } } satisfies Prisma.SpoolInclude;
type SpoolRow = Prisma.SpoolGetPayload<{ include: typeof WITH_IDENTITIES }>;
type Names = ReadonlyMap<string, string>;

const codeOf = (row: { blindCode: string }): string => row.blindCode;

/** Spools for editors, who hold the key and are known to have read it, and for testers, who see blind codes. */
@Injectable()
export class SpoolsReadModel {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsReadModel,
    private readonly superseded: SupersededRows,
    private readonly keyReadings: KeyReadings,
  ) {}

  async page(reader: Actor, page: PageQuery) {
    const rows = await this.database.client.spool.findMany({ ...after('blindCode', page), include: WITH_IDENTITIES });
    await this.keyReadings.note(reader, 'key', { codes: rows.map(codeOf) });
    const names = await this.namesIn(rows);
    return toPage(rows, page.limit, codeOf, (row) => toSpool(row, names));
  }

  async byCode(reader: Actor, blindCode: string): Promise<SpoolResponse | null> {
    await this.keyReadings.note(reader, 'key', { codes: [blindCode] });
    const row = await this.database.client.spool.findUnique({ where: { blindCode }, include: WITH_IDENTITIES });
    return row && withFormer(toSpool(row, await this.namesIn([row])), await this.superseded.of([row.id]));
  }

  /**
   * Selects nothing but code and length, in the order of the codes, so that neither names nor neighbourhood tell what a spool is; and of
   * the reader's own work alone, so that a code that comes to the shelf later, as that of a re-test does, does not show.
   */
  async blindPage({ accountId: testerId }: Actor, page: PageQuery) {
    const { where, ...rest } = after('blindCode', page);
    const rows = await this.database.client.spool.findMany({
      ...rest,
      where: { ...where, OR: [{ assignments: { some: { testerId } } }, { submissions: { some: { testerId } } }] },
      select: { blindCode: true, lengthM: true },
    });
    return toPage(rows, page.limit, codeOf, ({ blindCode, lengthM }) => ({ blindCode, lengthM: lengthM?.toFixed() ?? null }));
  }

  /** Codes and lengths alone of the named spools, in the order of the codes, for whoever puts them on the spools and holds these. */
  async labels(reader: Actor, codes: readonly string[]) {
    await this.keyReadings.note(reader, 'label', { codes });
    const rows = await this.database.client.spool.findMany({
      where: { blindCode: among(codes) },
      orderBy: { blindCode: 'asc' },
      select: { blindCode: true, lengthM: true },
    });
    return rows.map(({ blindCode, lengthM }) => ({ blindCode, lengthM: lengthM?.toFixed() ?? null }));
  }

  /** Slugs of the variants and names of the editors in re-identifications, by id. */
  private async namesIn(rows: readonly SpoolRow[]): Promise<Names> {
    const changes = rows.flatMap((row) => row.reidentifications);
    if (changes.length === 0) return new Map();
    const ids = changes.flatMap((change) => [change.fromVariantId, change.toVariantId]);
    const variants = await this.database.client.variant.findMany({ where: { id: among(ids) }, select: { id: true, slug: true } });
    const people = await this.accounts.displayNames(changes.map((change) => change.byId));
    return new Map([...variants.map(({ id, slug }) => [id, slug] as const), ...people]);
  }
}

const toSpool = (row: SpoolRow, names: Names): SpoolResponse => ({
  blindCode: row.blindCode,
  variant: row.variant.slug,
  source: row.source as SpoolSource,
  obtainedOn: row.obtainedOn.toISOString().slice(0, 10),
  place: row.place,
  lot: row.lot,
  lengthM: row.lengthM?.toFixed() ?? null,
  reidentifications: row.reidentifications.map(({ fromVariantId, toVariantId, reason, byId, at }) => ({
    fromVariant: names.get(fromVariantId) ?? fromVariantId,
    toVariant: names.get(toVariantId) ?? toVariantId,
    reason,
    by: names.get(byId) ?? byId,
    at: at.toISOString(),
  })),
  retired: toRetired(row),
  version: row.version,
});

import { Injectable } from '@nestjs/common';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { VariantName } from '../contract/documents/release-documents.js';
import { isBlindCode, normaliseBlindCode } from '../contract/blind-code.js';
import type { ClaimEvidence, SpoolEvidence } from '../reckoning/evidence/catalogue-evidence.js';
import type { ClaimBasis, ClaimedQuantity } from '../contract/claims.js';
import type { SpoolSource } from '../contract/spool-sources.js';
import { toVariantName } from './variants/variant-name.js';

const OF_SPOOL = { variant: { include: { line: true, claims: true } } } as const;
const WITH_NAMES = { line: { include: { maker: true } }, claims: true } as const;

/** What submissions, editions and releases may know of the catalogue. Dates are ISO 8601 texts, values exact decimals in SI. */
@Injectable()
export class CatalogueReadModel {
  constructor(private readonly database: Database) {}

  /** Whether a blind code cannot be right: its check character does not fit. */
  isMistyped(code: string): boolean {
    return !isBlindCode(normaliseBlindCode(code));
  }

  /** The spool behind a blind code with the variant it is, for the checks; never shown to a tester. */
  async spoolByCode(code: string) {
    return (await this.spoolsByCodes([code])).get(code) ?? null;
  }

  /** Spools by their codes as typed, in as many statements for one as for thousands; an unknown code has none. */
  async spoolsByCodes(codes: readonly string[]) {
    const rows = await this.database.client.spool.findMany({
      where: { blindCode: among(codes.map(normaliseBlindCode)) },
      include: OF_SPOOL,
    });
    const known = new Map(rows.map((row) => [row.blindCode, toSpoolOnRecord(row)]));
    return new Map(
      codes.flatMap((code) => {
        const spool = known.get(normaliseBlindCode(code));
        return spool ? [[code, spool] as const] : [];
      }),
    );
  }

  /** Blind codes of spools by their ids. */
  async spoolCodes(ids: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.spool.findMany({ where: { id: among(ids) }, select: { id: true, blindCode: true } });
    return new ById(rows.map(({ id, blindCode }) => [id, blindCode]));
  }

  /** What rows of the catalogue are called, by their ids: a slug, a blind code, or a variant and what is claimed of it. */
  async rowNames(ids: readonly string[]): Promise<ReadonlyMap<string, string>> {
    const rows = await this.database.client.$queryRaw<{ id: string; name: string }[]>`
      SELECT r."id"::text, r."name" FROM (
        SELECT "id", "slug" AS "name" FROM "maker" UNION ALL SELECT "id", "slug" FROM "line" UNION ALL SELECT "id", "slug" FROM "variant"
        UNION ALL SELECT "id", "blind_code" FROM "spool"
        UNION ALL SELECT c."id", v."slug" || ' ' || c."quantity" FROM "claim" c JOIN "variant" v ON v."id" = c."variant_id"
      ) r WHERE r."id" = ANY(${[...ids]}::uuid[])`;
    return new Map(rows.map(({ id, name }) => [id, name]));
  }

  /** Spools with the variants that they are, by their ids; never shown to a tester. */
  async spoolsById(ids: readonly string[]): Promise<ById<SpoolOnRecord>> {
    const rows = await this.database.client.spool.findMany({ where: { id: among(ids) }, include: OF_SPOOL });
    return new ById(rows.map((row) => [row.id, toSpoolOnRecord(row)]));
  }

  /** Those of a draw, or among these spools, that stand a second time for a submission. */
  async putBack(which: { readonly drawId: string } | { readonly spoolIds: readonly string[] }) {
    const where = 'drawId' in which ? which : { spoolId: among(which.spoolIds) };
    const rows = await this.database.client.retest.findMany({ where, select: { spoolId: true, submissionId: true } });
    if (rows.length === 0) return [];
    const codes = await this.spoolCodes(rows.map(({ spoolId }) => spoolId));
    return rows.map((row) => ({ ...row, code: codes.of(row.spoolId) }));
  }

  /** Ids of all spools that stand a second time for a submission. */
  async allPutBack(): Promise<string[]> {
    return (await this.database.client.retest.findMany({ select: { spoolId: true } })).map(({ spoolId }) => spoolId);
  }

  /** Ids of all spools that are of the variant of this one. */
  async spoolsOfSameVariant(id: string): Promise<string[]> {
    const rows = await this.database.client.spool.findMany({ where: { variant: { spools: { some: { id } } } }, select: { id: true } });
    return rows.map((row) => row.id);
  }

  /** Variants of all spools that are of these variants, by the ids of the spools. */
  async variantsOfSpools(variantIds: readonly string[]): Promise<ById<string>> {
    const where = { variantId: among(variantIds) };
    const rows = await this.database.client.spool.findMany({ where, select: { id: true, variantId: true } });
    return new ById(rows.map(({ id, variantId }) => [id, variantId]));
  }

  /** Row of a maker; null when there is none. */
  async makerId(slug: string): Promise<string | null> {
    return (await this.database.client.maker.findUnique({ where: { slug }, select: { id: true } }))?.id ?? null;
  }

  /** Row of a line; null when there is none. */
  async lineId(slug: string): Promise<string | null> {
    return (await this.database.client.line.findUnique({ where: { slug }, select: { id: true } }))?.id ?? null;
  }

  /** Slugs of makers by their ids. */
  async makerSlugs(ids: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.maker.findMany({ where: { id: among(ids) }, select: { id: true, slug: true } });
    return new ById(rows.map(({ id, slug }) => [id, slug]));
  }

  /** A variant by its slug; null when there is none. */
  async variantBySlug(slug: string) {
    const row = await this.database.client.variant.findUnique({ where: { slug }, include: WITH_NAMES });
    if (!row) return null;
    const { id, line } = row;
    const isRetired = [row, line, line.maker].some(({ retiredOn }) => retiredOn !== null);
    return { id, makerId: line.makerId, densityGPerCm3: line.densityGPerCm3.toNumber(), name: toVariantName(row), isRetired };
  }

  /** What decides on divisions, of variants by their ids. */
  async dividedBy(variantIds: readonly string[]) {
    const rows = await this.database.client.variant.findMany({
      where: { id: among(variantIds) },
      select: { id: true, slug: true, line: { select: { material: true, construction: true } } },
    });
    return new ById(rows.map(({ id, ...variant }) => [id, variant]));
  }

  /** Names of variants by id. */
  async variantNames(variantIds: readonly string[]): Promise<Map<string, VariantName>> {
    const rows = await this.database.client.variant.findMany({ where: { id: among(variantIds) }, include: WITH_NAMES });
    return new Map(rows.map((row) => [row.id, toVariantName(row)]));
  }

  /** Claims of variants, by variant and quantity. */
  async claimsOf(variantIds: readonly string[]): Promise<ClaimEvidence[]> {
    const rows = await this.database.client.claim.findMany({
      where: { variantId: among(variantIds) },
      orderBy: [{ variant: { slug: 'asc' } }, { quantity: 'asc' }],
      include: { variant: { select: { slug: true } } },
    });
    return rows.map((row) => ({
      variant: row.variant.slug,
      quantity: row.quantity as ClaimedQuantity,
      basis: row.basis as ClaimBasis,
      printed: { text: row.printedText, unit: row.printedUnit },
      valueSi: row.valueSi.toFixed(),
      seenOn: row.seenOn.toISOString().slice(0, 10),
      source: row.source,
    }));
  }

  /** Spools that are, as is known now, of these variants, by blind code, each with its re-identifications, oldest first. */
  async spoolsOf(variantIds: readonly string[]): Promise<SpoolEvidence[]> {
    const rows = await this.database.client.spool.findMany({
      where: { variantId: among(variantIds) },
      orderBy: { blindCode: 'asc' },
      include: { variant: { select: { slug: true } }, reidentifications: { orderBy: [{ at: 'asc' }, { id: 'asc' }] } },
    });
    return rows.map((row) => ({
      code: row.blindCode,
      variant: row.variant.slug,
      source: row.source as SpoolSource,
      obtainedOn: row.obtainedOn.toISOString().slice(0, 10),
      place: row.place,
      lot: row.lot,
      lengthM: row.lengthM?.toFixed() ?? null,
      reidentifications: row.reidentifications.map(({ reason, at }) => ({ reason, at: at.toISOString() })),
    }));
  }
}

const toSpoolOnRecord = ({ id, blindCode, obtainedOn, retiredOn, variant }: Prisma.SpoolGetPayload<{ include: typeof OF_SPOOL }>) => ({
  id,
  blindCode,
  obtainedOn: obtainedOn.toISOString().slice(0, 10),
  retiredOn: retiredOn?.toISOString().slice(0, 10) ?? null,
  variant: {
    id: variant.id,
    slug: variant.slug,
    material: variant.line.material,
    densityGPerCm3: variant.line.densityGPerCm3.toNumber(),
    makerId: variant.line.makerId,
    claims: variant.claims.map(({ quantity, valueSi }) => ({ quantity, valueSi: valueSi.toFixed() })),
  },
});

export type SpoolOnRecord = ReturnType<typeof toSpoolOnRecord>;

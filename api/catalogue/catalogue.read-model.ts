import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { VariantName } from '../contract/documents/release-documents.js';
import { isBlindCode, normaliseBlindCode } from '../contract/blind-code.js';
import type { ClaimEvidence, SpoolEvidence } from '../reckoning/evidence/catalogue-evidence.js';
import type { ClaimBasis, ClaimedQuantity } from '../contract/claims.js';
import type { SpoolSource } from '../contract/spool-sources.js';
import { toVariantName } from './variant-name.js';

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
    const row = await this.database.client.spool.findUnique({
      where: { blindCode: normaliseBlindCode(code) },
      include: { variant: { include: { line: true, claims: true } } },
    });
    if (!row) return null;
    const { id, slug, line, claims } = row.variant;
    return {
      id: row.id,
      blindCode: row.blindCode,
      obtainedOn: row.obtainedOn.toISOString().slice(0, 10),
      variant: {
        id,
        slug,
        material: line.material,
        densityGPerCm3: line.densityGPerCm3.toNumber(),
        makerId: line.makerId,
        claims: claims.map(({ quantity, valueSi }) => ({ quantity, valueSi: valueSi.toFixed() })),
      },
    };
  }

  /** A variant by its slug; null when there is none. */
  async variantBySlug(slug: string) {
    const row = await this.database.client.variant.findUnique({ where: { slug }, include: WITH_NAMES });
    if (!row) return null;
    const { id, line } = row;
    const isRetired = [row, line, line.maker].some(({ retiredOn }) => retiredOn !== null);
    return { id, makerId: line.makerId, densityGPerCm3: line.densityGPerCm3.toNumber(), name: toVariantName(row), isRetired };
  }

  /** Names of variants by id. */
  async variantNames(variantIds: readonly string[]): Promise<Map<string, VariantName>> {
    const rows = await this.database.client.variant.findMany({ where: { id: { in: [...variantIds] } }, include: WITH_NAMES });
    return new Map(rows.map((row) => [row.id, toVariantName(row)]));
  }

  /** Claims of variants, by variant and quantity. */
  async claimsOf(variantIds: readonly string[]): Promise<ClaimEvidence[]> {
    const rows = await this.database.client.claim.findMany({
      where: { variantId: { in: [...variantIds] } },
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
      where: { variantId: { in: [...variantIds] } },
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

import type { ClaimResponse, LineResponse, MakerResponse, VariantResponse } from '../contract/endpoints/catalogue.js';
import { toRetired } from '../contract/retired.js';
import type { Retirement } from '../contract/retired.js';
import { SI_UNIT_OF_QUANTITY } from './variants/read-claim.js';
import type { ClaimBasis, ClaimedQuantity } from '../contract/claims.js';
import type { Construction } from '../contract/constructions.js';

/** A number as the database gives it: exact, not yet text. */
interface ExactNumber {
  toFixed(): string;
}

interface MakerRow extends Retirement {
  readonly slug: string;
  readonly name: string;
  readonly version: number;
}

interface LineRow extends Retirement {
  readonly slug: string;
  readonly maker: MakerRow;
  readonly name: string;
  readonly material: string;
  readonly construction: string;
  readonly carriers: number | null;
  readonly densityGPerCm3: ExactNumber;
  readonly version: number;
}

interface ClaimRow {
  readonly quantity: string;
  readonly basis: string;
  readonly printedText: string;
  readonly printedUnit: string;
  readonly valueSi: ExactNumber;
  readonly seenOn: Date;
  readonly source: string;
}

interface VariantRow extends Retirement {
  readonly slug: string;
  readonly line: LineRow;
  readonly size: string;
  readonly colour: string;
  readonly claims: readonly ClaimRow[];
  readonly version: number;
}

export const toMaker = ({ slug, name, version, ...row }: MakerRow): MakerResponse => ({ slug, name, retired: toRetired(row), version });

export const toLine = ({
  slug,
  maker,
  name,
  material,
  construction,
  carriers,
  densityGPerCm3,
  version,
  ...row
}: LineRow): LineResponse => ({
  slug,
  maker: maker.slug,
  name,
  material,
  construction: construction as Construction,
  carriers,
  densityGPerCm3: densityGPerCm3.toFixed(),
  retired: toRetired(row),
  version,
});

export const toClaim = (claim: ClaimRow): ClaimResponse => ({
  quantity: claim.quantity as ClaimedQuantity,
  basis: claim.basis as ClaimBasis,
  printed: { text: claim.printedText, unit: claim.printedUnit },
  value: claim.valueSi.toFixed(),
  unit: SI_UNIT_OF_QUANTITY[claim.quantity as ClaimedQuantity],
  seenOn: claim.seenOn.toISOString().slice(0, 10),
  source: claim.source,
});

export const toVariant = ({ slug, line, size, colour, claims, version, ...row }: VariantRow): VariantResponse => ({
  slug,
  line: line.slug,
  maker: line.maker.slug,
  size,
  colour,
  claims: claims.map(toClaim).sort((one, other) => (one.quantity < other.quantity ? -1 : 1)),
  retired: toRetired(row),
  version,
});

import type { ClaimModel, LineModel, MakerModel, VariantModel } from '../platform/database/generated/models.js';
import type { ClaimResponse, LineResponse, MakerResponse, VariantResponse } from './catalogue.schemas.js';
import { SI_UNIT_OF_QUANTITY } from './claim.js';
import type { ClaimBasis, ClaimedQuantity } from './claim.js';
import type { Construction } from './line.js';

type LineRow = LineModel & { maker: MakerModel };
type VariantRow = VariantModel & { line: LineRow; claims: ClaimModel[] };

export const toMaker = ({ slug, name, version }: MakerModel): MakerResponse => ({ slug, name, version });

export const toLine = ({ slug, maker, name, material, construction, carriers, densityGPerCm3, version }: LineRow): LineResponse => ({
  slug,
  maker: maker.slug,
  name,
  material,
  construction: construction as Construction,
  carriers,
  densityGPerCm3: densityGPerCm3.toFixed(),
  version,
});

export const toClaim = (claim: ClaimModel): ClaimResponse => ({
  quantity: claim.quantity as ClaimedQuantity,
  basis: claim.basis as ClaimBasis,
  printed: { text: claim.printedText, unit: claim.printedUnit },
  value: claim.valueSi.toFixed(),
  unit: SI_UNIT_OF_QUANTITY[claim.quantity as ClaimedQuantity],
  seenOn: claim.seenOn.toISOString().slice(0, 10),
  source: claim.source,
});

export const toVariant = ({ slug, line, size, colour, claims, version }: VariantRow): VariantResponse => ({
  slug,
  line: line.slug,
  maker: line.maker.slug,
  size,
  colour,
  claims: claims.map(toClaim).sort((one, other) => (one.quantity < other.quantity ? -1 : 1)),
  version,
});

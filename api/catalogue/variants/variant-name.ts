import type { VariantName } from '../../contract/documents/release-documents.js';

interface NamedVariant {
  readonly slug: string;
  readonly size: string;
  readonly colour: string;
  readonly line: {
    readonly slug: string;
    readonly name: string;
    readonly material: string;
    readonly construction: string;
    readonly carriers: number | null;
    readonly maker: { readonly slug: string; readonly name: string };
  };
  readonly claims: readonly { readonly quantity: string; readonly printedText: string; readonly printedUnit: string }[];
}

/** What a variant is called, with the PE number and the rated strength as its label prints them. */
export function toVariantName({ slug, size, colour, line, claims }: NamedVariant): VariantName {
  const peNumber = claims.find((claim) => claim.quantity === 'peNumber');
  const rated = claims.find((claim) => claim.quantity === 'breakingForce');
  return {
    slug,
    maker: { slug: line.maker.slug, name: line.maker.name },
    line: { slug: line.slug, name: line.name },
    size,
    colour,
    material: line.material,
    construction: line.construction as VariantName['construction'],
    carriers: line.carriers,
    peNumber: peNumber?.printedText ?? null,
    ratedStrength: rated ? { value: rated.printedText, unit: rated.printedUnit } : null,
  };
}

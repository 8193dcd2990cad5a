import type { CatalogueDocument } from '../../../api/contract/documents/release-documents.js';
import { once } from './once.js';

type Maker = CatalogueDocument['makers'][number];
type Line = Maker['lines'][number];
interface Row {
  readonly variant: { readonly slug: string };
}

const rowsBySlug = once((rows: readonly Row[]) => new Map(rows.map((row) => [row.variant.slug, row])));
const makersBySlug = once((makers: readonly Maker[]) => new Map(makers.map((maker) => [maker.slug, maker])));
const linesBySlug = once(
  (makers: readonly Maker[]) => new Map(makers.flatMap((maker) => maker.lines.map((line) => [line.slug, { maker, line }] as const))),
);

/** The row of a variant among the rows of a document; undefined where it has none. */
export const rowOf = <One extends Row>(rows: readonly One[], slug: string): One | undefined =>
  rowsBySlug(rows).get(slug) as One | undefined;

export const makerOf = (makers: readonly Maker[], slug: string): Maker | undefined => makersBySlug(makers).get(slug);

export const lineOf = (makers: readonly Maker[], slug: string): { maker: Maker; line: Line } | undefined => linesBySlug(makers).get(slug);

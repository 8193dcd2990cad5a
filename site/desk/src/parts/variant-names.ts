/** What people call a variant: maker, line, size and colour. */
import { createContext } from 'preact';
import { linesResponse, makersResponse, variantsResponse } from '../../../../api/contract/endpoints/catalogue.js';
import type { LineResponse, MakerResponse, VariantResponse } from '../../../../api/contract/endpoints/catalogue.js';
import { lineName } from '../../../../api/contract/line-name.js';
import { allPages } from '../http/all-pages.js';
import { nameWhenThere } from './name-when-there.js';
import { useLoaded } from './use-loaded.js';

export interface CatalogueRows {
  readonly makers: readonly MakerResponse[];
  readonly lines: readonly LineResponse[];
  readonly variants: readonly VariantResponse[];
}

export async function loadCatalogue(): Promise<CatalogueRows> {
  const [makers, lines, variants] = await Promise.all([
    allPages(makersResponse, 'catalogue/makers?limit=200'),
    allPages(linesResponse, 'catalogue/lines?limit=200'),
    allPages(variantsResponse, 'catalogue/variants?limit=200'),
  ]);
  return { makers, lines, variants };
}

/** Short name → name. */
export function variantNames(rows: CatalogueRows): ReadonlyMap<string, string> {
  const lines = namesOfLines(rows);
  return new Map(rows.variants.map(({ slug, line, size, colour }) => [slug, `${lines.get(line) ?? line} ${size}, ${colour}`]));
}

/** Short name → maker and line. */
export function namesOfLines({ makers, lines }: CatalogueRows): ReadonlyMap<string, string> {
  const makerOf = (slug: string) => makers.find((maker) => maker.slug === slug) ?? { name: slug };
  return new Map(lines.map((line) => [line.slug, lineName(makerOf(line.maker), line)]));
}

/** For an editor; a tester is answered nothing of this. */
export function useVariantNames(): (slug: string) => string {
  const names = useLoaded(async () => variantNames(await loadCatalogue()));
  return nameWhenThere(names, (all, slug) => all.get(slug));
}

/** What something of an edition is called: a variant, a category, a division, a method. */
export const NameOf = createContext<(slug: string) => string>((slug) => slug);

/** A text of the API with names for short names. */
export const inNames = (text: string, nameOf: (slug: string) => string): string =>
  text
    .split(', ')
    .map((part) => (nameOf(part) === part ? part.replace(/\b[a-z0-9]+(?:-[a-z0-9]+)+\b/g, nameOf) : nameOf(part)))
    .join(', ');

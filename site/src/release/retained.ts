import type { Category, Figure } from '../../../api/contract/documents/release-documents.js';
import { fullName } from '../words/variant-words.js';
import type { Addresses } from './addresses.js';
import type { Tables } from './load-release.js';

/** What a knot leaves beside what abrasion leaves, of every variant that has both. */
export interface Retained {
  readonly knot: Category;
  readonly abrasion: Category;
  readonly lines: readonly {
    readonly slug: string;
    readonly name: string;
    readonly href: string | null;
    readonly knot: Figure;
    readonly abrasion: Figure;
  }[];
}

/** Each category of a knot beside the first of abrasion; none where an edition has not both. */
export async function retainedIn(tables: Tables, addresses: Addresses): Promise<Retained[]> {
  const { categories } = (await tables.edition()).scheme;
  const kinds = await Promise.all(categories.map((category) => treatmentOf(tables, category)));
  const abrasion = categories[kinds.indexOf('abrasion')];
  if (!abrasion) return [];
  const rubbed = new Map((await tables.category(abrasion.code)).rows.map(({ variant, figure }) => [variant.slug, figure]));
  return Promise.all(
    categories
      .filter((_, at) => kinds[at] === 'knot')
      .map(async (knot) => ({
        knot,
        abrasion,
        lines: (await tables.category(knot.code)).rows.flatMap(({ variant, figure }) => {
          const beside = rubbed.get(variant.slug);
          return beside
            ? [{ slug: variant.slug, name: fullName(variant), href: addresses.variant(variant.slug), knot: figure, abrasion: beside }]
            : [];
        }),
      })),
  );
}

async function treatmentOf(tables: Tables, { method, methodVersion, series }: Category): Promise<string | null> {
  const all = (await tables.method(method, methodVersion)).series ?? [];
  const own = all.find((one) => one.code === series);
  return own?.kind === 'breakingForce' ? (own.treatment?.kind ?? null) : null;
}

import { say } from '../words/say.js';
import { fullName, constructionWords } from '../words/variant-words.js';
import { addressesOf } from './addresses.js';
import { rowOf } from './by-slug.js';
import type { Release, Tables } from './load-release.js';
import { remarkedIn } from './remarked-in.js';
import { measuresOf } from './measures-of.js';

/** One published table: the overall order, or a category. */
export interface FindTable {
  readonly code: string;
  readonly name: string;
  readonly unit: string | null;
  /** Which values are better; of the overall order a low score. */
  readonly direction: 'more' | 'less';
  readonly href: string;
  /** Placed rows of the whole table. */
  readonly placed: number;
}

/** What stands of a line in one table. */
export interface FindRow {
  readonly place: number;
  readonly group: number | null;
  readonly couldBeFirst: boolean | null;
  /** Value with its interval, as published; of the overall order the score. */
  readonly value: string;
  readonly low: string | null;
  readonly high: string | null;
  /** Variant of the next placed row, with the chance of being ahead of it [%]. */
  readonly next: { readonly slug: string; readonly aheadPercent: string | null } | null;
}

export interface FindLine {
  readonly slug: string;
  readonly name: string;
  readonly href: string;
  /** How it is made, in words: `braided UHMWPE`. */
  readonly make: string;
  readonly diameterMm: string | null;
  readonly forceN: string | null;
  readonly pe: string | null;
  /** Whether words stand beside its figures: a caveat or a reply. */
  readonly isRemarked: boolean;
  /** False where it was left out because nobody can buy it. */
  readonly isObtainable: boolean;
  /** In the order of the tables; null where it has no place. */
  readonly rows: readonly (FindRow | null)[];
}

/** What is compared with one another: a division, or the whole edition. */
export interface FindIndex {
  /** Slug of the division; empty where the edition is not divided. */
  readonly division: string;
  readonly name: string;
  readonly tables: readonly FindTable[];
  readonly lines: readonly FindLine[];
  /** Chances overall of every pair [%], as published. */
  readonly pairs: { readonly variants: readonly string[]; readonly aheadPercent: readonly (readonly number[])[] };
}

interface Ranked {
  readonly variant: { readonly slug: string };
  readonly place: number | null;
  readonly group: number | null;
  readonly couldBeFirst?: boolean | null | undefined;
  readonly chanceAheadOfNextPercent: string | null;
}

/** What a line is found by in one release, division by division: finished figures, nothing is computed where they are shown. */
export const findIndexOf = async (release: Release): Promise<FindIndex[]> =>
  Promise.all((await release.tables()).map((tables) => indexOf(release, tables)));

async function indexOf(release: Release, tables: Tables): Promise<FindIndex> {
  const [edition, measures, pairs] = [await tables.edition(), await measuresOf(release), await tables.pairs()];
  const addresses = await addressesOf(edition.edition.slug, edition.revision, edition.division);
  const categories = await Promise.all(edition.scheme.categories.map(({ code }) => tables.category(code)));
  const overallRow = placedRows(edition.overall, ({ score }) => ({ value: score, low: null, high: null }));
  const categoryRows = categories.map(({ rows }) => placedRows(rows, ({ figure: { value, low, high } }) => ({ value, low, high })));
  const remarked = remarkedIn(await release.remarks());
  const gone = new Set(edition.excluded.filter(({ reasonCode }) => reasonCode === 'notObtainable').map(({ variant }) => variant.slug));
  const countOf = (rows: readonly Ranked[]) => rows.filter(({ place }) => place !== null).length;
  const all = new Map(
    [...edition.overall, ...categories.flatMap(({ rows }) => rows)].map(({ variant }) => [variant.slug, variant] as const),
  );
  return {
    division: edition.division?.slug ?? '',
    name: edition.division?.name ?? edition.edition.name,
    tables: [
      {
        code: 'overall',
        name: say`Overall order`,
        unit: null,
        direction: 'less' as const,
        href: addresses.edition,
        placed: countOf(edition.overall),
      },
      ...categories.map(({ category: { code, name, unit, direction }, rows }) => ({
        code,
        name,
        unit,
        direction,
        href: addresses.category(code),
        placed: countOf(rows),
      })),
    ],
    lines: [...all.values()].map((variant) => ({
      slug: variant.slug,
      name: fullName(variant),
      href: addresses.variant(variant.slug) ?? addresses.edition,
      make: `${constructionWords(variant.construction)} ${variant.material}`,
      diameterMm: measures.get(variant.slug)?.diameter?.value ?? null,
      forceN: measures.get(variant.slug)?.force?.value ?? null,
      pe: variant.peNumber,
      isRemarked: remarked.has(variant.slug),
      isObtainable: !gone.has(variant.slug),
      rows: [overallRow(variant.slug), ...categoryRows.map((rowFor) => rowFor(variant.slug))],
    })),
    pairs: { variants: pairs.variants, aheadPercent: pairs.aheadPercent },
  };
}

function placedRows<Row extends Ranked>(rows: readonly Row[], figureOf: (row: Row) => Pick<FindRow, 'value' | 'low' | 'high'>) {
  const placed = rows.filter(({ place }) => place !== null);
  const following = new Map(placed.map((row, at) => [row.variant.slug, placed[at + 1]?.variant.slug] as const));
  return (slug: string): FindRow | null => {
    const row = rowOf(rows, slug);
    if (!row || row.place === null) return null;
    const next = following.get(slug);
    return {
      place: row.place,
      group: row.group,
      couldBeFirst: row.couldBeFirst ?? null,
      ...figureOf(row),
      next: next === undefined ? null : { slug: next, aheadPercent: row.chanceAheadOfNextPercent },
    };
  };
}

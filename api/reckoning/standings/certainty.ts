/** How sure the places of an edition are: simultaneous place intervals, too-close-to-call groups, chances, what the order hangs on. Pure. */
import type { OrderSensitivity } from '../../measurement/ranking/sensitivity/order-sensitivity.js';
import { rankByModel } from '../../measurement/ranking/rank-by-model.js';
import type { ModelTable } from '../../measurement/ranking/model-ranking.js';
import type { RowCertainty } from '../../measurement/ranking/table-certainty.js';
import type { ComputedEdition } from './compute-edition.js';
import { isUnplaced, shortfallsOf } from '../results/eligibility.js';
import { keyOf } from '../results/quantity.js';

/** Slug of the variant → how sure its place is. */
export interface Certainty {
  readonly categories: ReadonlyMap<string, ReadonlyMap<string, RowCertainty>>;
  readonly overall: ReadonlyMap<string, RowCertainty>;
  readonly sensitivity: OrderSensitivity | null;
  /** Overall: slugs best first, and the chance that the i-th is ahead of the j-th at i·n + j; null for long tables. */
  readonly pairs: { readonly variants: readonly string[]; readonly chances: Float64Array } | null;
}

const NOTHING: Certainty = { categories: new Map(), overall: new Map(), sensitivity: null, pairs: null };

type Ranked = Pick<ComputedEdition, 'edition' | 'results' | 'fits'>;

/**
 * Computes the certainty of all placed rows; how many draws it takes, `rank-by-model.ts` says.
 * @param seed SHA-256 of the inputs, hexadecimal
 */
export function certaintyOf({ edition, results, fits }: Ranked, seed: string): Certainty {
  const { combine, countPlaces, tieBreak } = edition.scheme.rules;
  // Nothing is said of categories without places, and the score leaves them out.
  const categories = edition.scheme.rules.categories.filter((category) => !isUnplaced(category, { results, fits }));
  if (categories.length === 0) return NOTHING;
  const entries = edition.entries.map(({ variant, exclusion }) => ({
    id: variant,
    isExcluded: exclusion !== null,
    found: categories.map((category) => {
      const counts = shortfallsOf(category, variant, results).length === 0;
      return [category.code, counts ? (results.get(variant)?.get(keyOf(category))?.evidence ?? null) : null] as const;
    }),
  }));
  const {
    categories: tables,
    overall,
    sensitivity,
  } = rankByModel({
    digest: seed,
    categories,
    combine,
    countPlaces,
    tieBreak,
    series: fits,
    entries: entries.map(({ found, ...entry }) => ({
      ...entry,
      results: Object.fromEntries(found),
    })),
  });
  const byId = (table: ModelTable) => new Map(table.kind === 'placed' ? table.rows.map((row) => [row.id, row] as const) : []);
  return {
    categories: new Map(Object.entries(tables).map(([code, table]) => [code, byId(table)])),
    overall: byId(overall),
    sensitivity,
    pairs:
      overall.kind === 'placed' && overall.pairChances
        ? { variants: overall.rows.map(({ id }) => id), chances: overall.pairChances }
        : null,
  };
}

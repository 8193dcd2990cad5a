/** How sure the places of an edition are: simultaneous place intervals, too-close-to-call groups, chances of being first. Pure. */
import { rankWithUncertainty } from '../measurement/ranking/rank-with-uncertainty.js';
import type { RankingInput } from '../measurement/ranking/ranking-input.js';
import type { RowCertainty, TableCertainty } from '../measurement/ranking/table-certainty.js';
import type { ComputedEdition } from './compute-edition.js';
import type { Estimate } from './estimate.js';

/** Slug of the variant → how sure its place is; empty where an uncertainty is not known, so that nothing is claimed. */
export interface Certainty {
  readonly categories: ReadonlyMap<string, ReadonlyMap<string, RowCertainty>>;
  readonly overall: ReadonlyMap<string, RowCertainty>;
}

type Ranked = Pick<ComputedEdition, 'edition' | 'results'>;

/**
 * Computes the certainty of all placed rows with 10 000 draws.
 * @param seed SHA-256 of the inputs, hexadecimal
 */
export function certaintyOf({ edition, results }: Ranked, seed: string): Certainty {
  const { categories, combine, countPlaces, tieBreak } = edition.scheme.rules;
  const entries = edition.entries.map(({ variant, exclusion }) => ({
    id: variant,
    isExcluded: exclusion !== null,
    results: Object.fromEntries(categories.map(({ code, quantity }) => [code, evidenceOf(results.get(variant)?.get(quantity)?.estimate)])),
  }));
  const isUnknown = [...results.values()].some((found) =>
    categories.some(({ quantity }) => {
      const estimate = found.get(quantity)?.estimate;
      return estimate !== undefined && evidenceOf(estimate) === null;
    }),
  );
  if (isUnknown) return { categories: new Map(), overall: new Map() };
  const input: RankingInput = { digest: seed, categories, combine, countPlaces, tieBreak, sources: {}, entries };
  const certainty = rankWithUncertainty(input);
  const byId = ({ rows }: TableCertainty) => new Map(rows.map((row) => [row.id, row]));
  return {
    categories: new Map(Object.entries(certainty.categories).map(([code, table]) => [code, byId(table)])),
    overall: byId(certainty.overall),
  };
}

function evidenceOf(estimate: Estimate | undefined) {
  if (!estimate || estimate.standardUncertainty === null) return null;
  const { value, standardUncertainty, degreesOfFreedom } = estimate;
  return { value, standardUncertainty, degreesOfFreedom, shared: [], without: {} };
}

import { roundHalfEven } from '../units/round-half-even.js';
import { drawPlaces } from './draws/draw-places.js';
import type { RankingRules } from './ranking-input.js';
import { schemePlaces } from './places/scheme-places.js';
import { schemeScores } from './places/scheme-scores.js';
import type { ScoredCategory } from './places/scheme-scores.js';

/** Published values of an edition as plain numbers, for standings that are computed again and again. */
export interface PointTable extends Pick<RankingRules, 'combine' | 'countPlaces' | 'tieBreak'> {
  readonly entries: readonly { readonly id: string; readonly isExcluded: boolean }[];
  readonly categories: readonly {
    readonly code: string;
    /** millionths, whole, so that sums of weighted places tie exactly */
    readonly weight: number;
    /** published value of each entry, turned so that more is better; NaN without one */
    readonly goodness: Float64Array;
  }[];
}

export interface PointStandings {
  /** positions of the entries that are ranked overall */
  readonly ranked: readonly number[];
  /** their results in each category */
  readonly categories: readonly ScoredCategory[];
  /** less is better; in millionths under a weighted sum */
  readonly scores: Float64Array;
  readonly places: Uint16Array;
}

const DECIMALS_OF_SCORE = 3;
/** Weights are whole millionths. */
export const WEIGHT_UNIT = 1e6;

/**
 * Overall standings of published values, by the same rules as `computeStandings`.
 *
 * Formula: places of all that count, in each category; scores of those that have all results; places of the scores as published
 * @param table published values and the scheme's rules
 * @returns who is ranked, and their places
 * @throws nothing: the caller checks the input
 * @see COMMON-PRACTICE
 * @example standOnce(table).places // [1, 2]
 */
export function standOnce(table: PointTable): PointStandings {
  const { entries, combine, countPlaces, tieBreak } = table;
  const has = (position: number, goodness: Float64Array): boolean => !Number.isNaN(goodness[position]!);
  const ranked = entries.flatMap(({ isExcluded }, i) =>
    !isExcluded && table.categories.every(({ goodness }) => has(i, goodness)) ? [i] : [],
  );
  const categories = table.categories.map(({ weight, goodness }) => {
    const counted = entries.flatMap(({ isExcluded }, i) =>
      (!isExcluded || countPlaces === 'beforeExclusions') && has(i, goodness) ? [i] : [],
    );
    const values = Float64Array.from(counted, (i) => goodness[i]!);
    const places = drawPlaces(values, new Float64Array(values.length));
    const placeOf = new Map(counted.map((i, at) => [i, places[at]!]));
    return { weight, places: Uint16Array.from(ranked, (i) => placeOf.get(i)!), goodness: Float64Array.from(ranked, (i) => goodness[i]!) };
  });
  const scores = schemeScores(categories, ranked.length, combine);
  return { ranked, categories, scores, places: schemePlaces(asPublished(scores, table), categories, ranked.length, tieBreak) };
}

/** Scores that differ beyond the published decimals only are tied. */
function asPublished(scores: Float64Array, { combine, categories }: PointTable): Float64Array {
  if (combine === 'sumOfPlaces' || combine === 'pairwiseWins') return scores;
  const total = categories.reduce((sum, { weight }) => sum + weight, 0);
  const unit = combine === 'weightedSumOfPlaces' ? WEIGHT_UNIT : Math.max(1, total);
  return scores.map((score) => Number(roundHalfEven(score / unit, DECIMALS_OF_SCORE)));
}

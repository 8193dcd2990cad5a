import { Decimal } from 'decimal.js';
import { roundHalfEven } from '../../units/round-half-even.js';
import type { Direction } from './competition-places.js';

export type Combination = 'sumOfPlaces' | 'weightedSumOfPlaces' | 'meanStandardScore' | 'pairwiseWins';

/** A category's results for the entries that are ranked overall, all in the same order. */
export interface CategoryForScore {
  readonly direction: Direction;
  /** Weight, a decimal. */
  readonly weight: string;
  readonly places: readonly number[];
  readonly values: readonly string[];
}

const SCORE_PLACES: Readonly<Record<Combination, number>> = {
  sumOfPlaces: 0,
  weightedSumOfPlaces: 3,
  meanStandardScore: 3,
  pairwiseWins: 1,
};

/** Whether a higher score is better under a combination. */
export const scoreDirection = (combine: Combination): Direction =>
  combine === 'meanStandardScore' || combine === 'pairwiseWins' ? 'more' : 'less';

/**
 * Overall scores of entries from their category results.
 *
 * Formula: Σ place · Σ w·place · Σ w·z/Σ w with z = (x − x̄)/s, turned round where less is better, 0 where all are equal · wins + ½ draws against each other entry, by the majority of categories
 * @param categories results of the same entries in the same order
 * @param combine how they are combined
 * @returns score of each entry as a decimal at the places of its combination [1]
 * @throws nothing: the values were read as decimals when they were placed
 * @see COMMON-PRACTICE
 * @see COPELAND-1951
 * @example overallScores([{ direction: 'more', weight: '1', places: [1, 2], values: ['9', '8'] }], 'sumOfPlaces') // ['1', '2']
 */
export function overallScores(categories: readonly CategoryForScore[], combine: Combination): string[] {
  const count = categories[0]?.places.length ?? 0;
  const scores = { sumOfPlaces: sums, weightedSumOfPlaces: weightedSums, meanStandardScore: meanScores, pairwiseWins: wins }[combine](
    categories,
    count,
  );
  return scores.map((score) => roundHalfEven(score, SCORE_PLACES[combine]));
}

const sums = (categories: readonly CategoryForScore[], count: number): string[] =>
  Array.from({ length: count }, (_, i) => String(categories.reduce((sum, { places }) => sum + (places[i] ?? 0), 0)));

const weightedSums = (categories: readonly CategoryForScore[], count: number): string[] =>
  Array.from({ length: count }, (_, i) =>
    categories.reduce((sum, { places, weight }) => sum.plus(new Decimal(weight).times(places[i] ?? 0)), new Decimal(0)).toFixed(),
  );

function meanScores(categories: readonly CategoryForScore[], count: number): string[] {
  const totalWeight = categories.reduce((sum, { weight }) => sum.plus(weight), new Decimal(0));
  const standardised = categories.map(({ values, direction, weight }) => {
    const exact = values.map((value) => new Decimal(value));
    const mean = exact.reduce((sum, value) => sum.plus(value), new Decimal(0)).div(Math.max(1, count));
    const variance = exact.reduce((sum, value) => sum.plus(value.minus(mean).pow(2)), new Decimal(0)).div(Math.max(1, count - 1));
    const scale = variance.isZero() ? new Decimal(0) : new Decimal(weight).div(variance.sqrt()).times(direction === 'more' ? 1 : -1);
    return exact.map((value) => value.minus(mean).times(scale));
  });
  return Array.from({ length: count }, (_, i) =>
    standardised
      .reduce((sum, scores) => sum.plus(scores[i] ?? 0), new Decimal(0))
      .div(totalWeight.isZero() ? 1 : totalWeight)
      .toFixed(),
  );
}

function wins(categories: readonly CategoryForScore[], count: number): string[] {
  const balance = (i: number, j: number): number =>
    categories.reduce((sum, { places }) => sum + Math.sign((places[j] ?? 0) - (places[i] ?? 0)), 0);
  return Array.from({ length: count }, (_, i) => {
    let points = 0;
    for (let j = 0; j < count; j++) if (j !== i) points += (1 + Math.sign(balance(i, j))) / 2;
    return String(points);
  });
}

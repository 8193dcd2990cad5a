import type { Combination } from './overall-scores.js';

/** One category of several draws, for the entries that are ranked overall. */
export interface ScoredCategory {
  readonly weight: number;
  /** B·m places, draw by draw */
  readonly places: Uint16Array;
  /** B·m values, more is better, draw by draw */
  readonly goodness: Float64Array;
}

/**
 * Scores of many draws under a scheme, turned so that less is better.
 *
 * Formula: Σ place · Σ w·place · −Σ w·z, z = (g − ḡ)/s, 0 where all are equal · −(wins + ½ draws) by the majority of categories
 * @param categories one or more, of the same draws and entries
 * @param m number of entries ranked overall [1]
 * @param combine how they are combined
 * @returns B·m scores, draw by draw; less is better [1]
 * @throws nothing: the caller checks the shapes
 * @see COMMON-PRACTICE
 * @example schemeScores([{ weight: 2, places: Uint16Array.of(1, 2), goodness: Float64Array.of(9, 8) }], 2, 'weightedSumOfPlaces') // [2, 4]
 */
export function schemeScores(categories: readonly ScoredCategory[], m: number, combine: Combination): Float64Array {
  const scores = new Float64Array(categories[0]?.places.length ?? 0);
  if (combine === 'pairwiseWins') {
    for (let from = 0; from < scores.length; from += m) subtractWins(scores, categories, m, from);
    return scores;
  }
  for (const { weight, places, goodness } of categories) {
    if (combine === 'meanStandardScore')
      for (let from = 0; from < scores.length; from += m) subtractStandardScores(scores, goodness, weight, m, from);
    else {
      const share = combine === 'sumOfPlaces' ? 1 : weight;
      for (let at = 0; at < scores.length; at++) scores[at] = scores[at]! + share * places[at]!;
    }
  }
  return scores;
}

function subtractStandardScores(scores: Float64Array, goodness: Float64Array, weight: number, m: number, from: number): void {
  let sum = 0;
  for (let i = 0; i < m; i++) sum += goodness[from + i]!;
  const mean = sum / m;
  let squares = 0;
  let isFlat = true;
  for (let i = 0; i < m; i++) {
    squares += (goodness[from + i]! - mean) ** 2;
    isFlat &&= goodness[from + i] === goodness[from];
  }
  if (isFlat) return;
  const scale = weight / Math.sqrt(squares / (m - 1));
  for (let i = 0; i < m; i++) scores[from + i] = scores[from + i]! - scale * (goodness[from + i]! - mean);
}

function subtractWins(scores: Float64Array, categories: readonly ScoredCategory[], m: number, from: number): void {
  for (let i = 1; i < m; i++) {
    for (let j = 0; j < i; j++) {
      let balance = 0;
      for (const { places } of categories) {
        const ahead = places[from + j]! - places[from + i]!;
        balance += ahead > 0 ? 1 : ahead < 0 ? -1 : 0;
      }
      const points = balance > 0 ? 1 : balance < 0 ? 0 : 0.5;
      scores[from + i] = scores[from + i]! - points;
      scores[from + j] = scores[from + j]! - (1 - points);
    }
  }
}

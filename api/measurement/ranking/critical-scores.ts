import type { ComparedTable } from './compare-pairs.js';
import { largestTileQuantile } from './largest-scores.js';
import type { PairScales } from './largest-scores.js';

/** Scores that a difference must pass, by how many entries may still be equal to both of its own. */
export interface CriticalScores {
  /** sizes 2 … n of a group of equals, each a fifth above the one before [1] */
  readonly sizes: readonly number[];
  /** critical score of each size, never falling [1] */
  readonly scores: readonly number[];
}

/** From one size to the next; a group between two is judged as the larger one. */
const STEP = 1.2;

/**
 * Critical scores for groups of equal entries of every size.
 *
 * Formula: c_p the quantile of the largest score within ⌊n/p⌋ groups of p neighbours, at 1 − α_p = level^(⌊n/p⌋p/n): however the entries fall into groups of equals, and each group judged by its own c_p,
 * some group passes its score in 1 − level of the seasons at most (Ryan's and Welsch's shares of the error rate)
 * @param table values and draws
 * @param pairs pairs with 1/s_ij and ν_ij
 * @param level joint level in (0, 1) [1]
 * @returns sizes and scores [1]
 * @throws nothing: the caller checks the shapes
 * @see EINOT-GABRIEL-1975
 * @see WELSCH-1977
 * @example criticalScores(compared, pairs, 0.95).sizes // [2]
 */
export function criticalScores({ goodness, errors }: Pick<ComparedTable, 'goodness' | 'errors'>, pairs: PairScales, level: number): CriticalScores {
  const order = Int32Array.from(goodness.keys()).sort((a, b) => goodness[b]! - goodness[a]! || a - b);
  const sizes = sizesUpTo(pairs.n);
  let least = 0;
  const scores = sizes.map((size) => (least = Math.max(least, largestTileQuantile(errors, pairs, order, size, level))));
  return { sizes, scores };
}

function sizesUpTo(n: number): number[] {
  const sizes: number[] = [];
  for (let size = 2; size < n; size = Math.max(size + 1, Math.floor(STEP * size))) sizes.push(size);
  return [...sizes, n];
}

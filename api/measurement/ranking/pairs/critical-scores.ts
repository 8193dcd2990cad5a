import { largestTileQuantiles } from './largest-scores.js';
import type { PairScales } from './largest-scores.js';

/** Critical score of a group of up to so many equals. */
export interface CriticalScore {
  readonly size: number;
  readonly score: number;
}

/** From one size to the next; a group between two is judged as the larger one. */
const STEP = 1.1;

/**
 * Critical scores for groups of equal entries of every size.
 *
 * Formula: c_p the quantile of the largest score within ⌊m/p⌋ groups of p neighbours, at level^(⌊m/p⌋p/m): however m entries fall into groups of equals, and each group judged by its own c_p,
 * some group passes its score in 1 − level of the seasons at most (Ryan's and Welsch's shares of the error rate)
 * @param errors B·n drawn deviations, draw by draw [any one unit]
 * @param pairs pairs with 1/s_ij and ν_ij
 * @param order positions of the m ≥ 2 entries that may be equal to another, best first
 * @param level joint level in (0, 1) [1]
 * @returns sizes 2 … m, rising, with scores that never fall [1]
 * @throws nothing: the caller checks the shapes
 * @see EINOT-GABRIEL-1975
 * @see WELSCH-1977
 * @example criticalScores(Float64Array.of(1, 0), { n: 2, precision: Float64Array.of(0, 1, 1, 0), degreesOfFreedom: Float64Array.of(Infinity, Infinity, Infinity, Infinity) }, Int32Array.of(0, 1), 0.5)[0].score // 1
 */
export function criticalScores(errors: Float64Array, pairs: PairScales, order: Int32Array, level: number): CriticalScore[] {
  const sizes = sizesUpTo(order.length);
  const scores = largestTileQuantiles(errors, pairs, order, sizes, level);
  return sizes.map((size, at) => ({ size, score: scores[at]! }));
}

function sizesUpTo(m: number): number[] {
  const sizes: number[] = [];
  for (let size = 2; size < m; size = Math.max(size + 1, Math.floor(STEP * size))) sizes.push(size);
  return [...sizes, m];
}

import { normalQuantile } from '../distributions/normal-distribution.js';
import type { ComparedTable, PairComparison } from './compare-pairs.js';
import { largestScoreQuantile } from './largest-scores.js';
import { normalScore } from './normal-score.js';

/**
 * Entries that could be first: together they hold the best with the stated confidence.
 *
 * Formula: i is out when for some j z((g_j − g_i)/s_ij; ν_ij) > c_i, c_i the level's quantile of the largest such score of the draws over all j: a comparison of all with i, one-sided, made only
 * against i. c_i is at least Φ⁻¹(level) and at most the first critical score of all pairs, so it is drawn only for those in between
 * @param table values, draws and tails
 * @param comparison of all its pairs
 * @param level in (0, 1) [1]
 * @returns 1 for each entry that could be first; never none
 * @throws nothing: the caller checks the shapes
 * @see HSU-1984
 * @see DUNNETT-1980
 * @example couldBeFirst(compared, comparePairs(compared, 0.95), 0.95) // [1, 0]
 */
export function couldBeFirst(table: ComparedTable, { firstCritical, isAhead }: PairComparison, level: number): Uint8Array {
  const { goodness, differenceUncertainty, degreesOfFreedom, errors } = table;
  const n = goodness.length;
  const could = new Uint8Array(n);
  // No comparison of several is decided by less than a comparison of two would be.
  const surely = normalQuantile(level);
  for (let i = 0; i < n; i++) {
    let [most, isBehindForSure] = [0, false];
    for (let j = 0; j < n; j++) {
      const s = differenceUncertainty[j * n + i]!;
      if (j === i) continue;
      if (s === 0) isBehindForSure ||= isAhead[j * n + i] === 1;
      else most = Math.max(most, normalScore((goodness[j]! - goodness[i]!) / s, degreesOfFreedom[j * n + i]!));
    }
    if (isBehindForSure) continue;
    const isOpen = most > surely && most <= (firstCritical ?? 0);
    if (most <= surely || (isOpen && most <= criticalAgainst(i, errors, differenceUncertainty, degreesOfFreedom, level))) could[i] = 1;
  }
  return could;
}

function criticalAgainst(
  i: number,
  errors: Float64Array,
  differenceUncertainty: Float64Array,
  degreesOfFreedom: Float64Array,
  level: number,
): number {
  const n = Math.sqrt(differenceUncertainty.length);
  const precision = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const s = differenceUncertainty[j * n + i]!;
    if (s > 0) precision[j * n + i] = 1 / s;
  }
  return largestScoreQuantile(errors, { n, precision, degreesOfFreedom }, level);
}

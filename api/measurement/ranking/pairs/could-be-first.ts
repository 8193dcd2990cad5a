import { normalQuantile } from '../../distributions/normal-distribution.js';
import type { ComparedTable, PairComparison } from './compare-pairs.js';
import { boundedErrors, farthestAbove, isReached } from './errors-of-one.js';
import type { BoundedErrors } from './errors-of-one.js';
import { normalScore, studentOfScore } from './normal-score.js';

/** Share of the error rate that finds out who cannot rival an entry anyway (a tenth, as its authors recommend). */
const SHARE_OF_FIRST_STEP = 0.1;

/**
 * Entries that could be first: together they hold the best with the stated confidence.
 *
 * Formula: i is out when for some j z((g_j − g_i)/s_ij; ν_ij) > c_i, a comparison of all with i, one-sided, made only against i. c_i is the (level + β)-quantile of the largest such score of the draws,
 * each j first set back by λ_j = min(0, g_j − g_i + s_ij·t_β), the bound below which j lies beside i, all at once but for β = (1 − level)/10: who is surely behind i does not raise what i is
 * judged by. c_i is at least Φ⁻¹(level + β) and at most the first critical score of all pairs, so it is drawn only for those in between
 * @param table values, draws and tails
 * @param comparison of all its pairs
 * @param level in (0, 1) [1]
 * @returns 1 for each entry that could be first; never none
 * @throws nothing: the caller checks the shapes
 * @see HSU-1984
 * @see ROMANO-SHAIKH-WOLF-2014
 * @see DUNNETT-1980
 * @example couldBeFirst(compared, comparePairs(compared, 0.95), 0.95) // [1, 0]
 */
export function couldBeFirst(table: ComparedTable, { firstCritical, isAhead }: PairComparison, level: number): Uint8Array {
  const { goodness, differenceUncertainty, degreesOfFreedom } = table;
  const n = goodness.length;
  const could = new Uint8Array(n);
  const beta = SHARE_OF_FIRST_STEP * (1 - level);
  // No comparison of several is decided by less than a comparison of two would be.
  const surely = normalQuantile(level + beta);
  const drawn = boundedErrors(table.errors, n);
  for (let i = 0; i < n; i++) {
    let [most, isBehindForSure] = [0, false];
    for (let j = 0; j < n; j++) {
      const s = differenceUncertainty[j * n + i]!;
      if (j === i) continue;
      if (s === 0) isBehindForSure ||= isAhead[j * n + i] === 1;
      else {
        const t = (goodness[j]! - goodness[i]!) / s;
        if (t > most) most = Math.max(most, normalScore(t, degreesOfFreedom[j * n + i]!));
      }
    }
    if (isBehindForSure) continue;
    const isOpen = most > surely && most <= (firstCritical ?? 0);
    if (most <= surely || (isOpen && isRivalled(i, most, table, drawn, level, beta))) could[i] = 1;
  }
  return could;
}

/** Whether the critical score c_i is `most` at least. */
function isRivalled(i: number, most: number, table: ComparedTable, drawn: BoundedErrors, level: number, beta: number): boolean {
  const { goodness, differenceUncertainty } = table;
  const n = goodness.length;
  const s = differenceUncertainty.subarray(i * n, i * n + n);
  const degreesOfFreedom = table.degreesOfFreedom.subarray(i * n, i * n + n);
  const precision = s.map((one, j) => (one > 0 && j !== i ? 1 / one : 0));
  const farthest = farthestAbove(drawn, i, { precision, degreesOfFreedom }, 1 - beta);
  const reach = s.map((one, j) => {
    if (precision[j] === 0) return Infinity;
    const setBack = Math.min(0, goodness[j]! - goodness[i]! + one * studentOfScore(farthest, degreesOfFreedom[j]!));
    return one * studentOfScore(most, degreesOfFreedom[j]!) - setBack;
  });
  return isReached(drawn, i, reach, level + beta);
}

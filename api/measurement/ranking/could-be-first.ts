import { normalQuantile } from '../distributions/normal-distribution.js';
import type { ComparedTable, PairComparison } from './compare-pairs.js';
import { largestScoreQuantile } from './largest-scores.js';
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
  // One room for all: draws are large.
  let rivals: Float64Array | undefined;
  // No comparison of several is decided by less than a comparison of two would be.
  const surely = normalQuantile(level + beta);
  for (let i = 0; i < n; i++) {
    let [most, isBehindForSure] = [0, false];
    for (let j = 0; j < n; j++) {
      const s = differenceUncertainty[j * n + i]!;
      if (j === i) continue;
      if (s === 0) isBehindForSure ||= isAhead[j * n + i] === 1;
      else most = Math.max(most, normalScore((goodness[j]! - goodness[i]!) / s, degreesOfFreedom[j * n + i]!));
    }
    if (isBehindForSure) continue;
    if (most <= surely) could[i] = 1;
    else if (most <= (firstCritical ?? 0)) {
      rivals ??= new Float64Array(table.errors.length);
      if (most <= criticalAgainst(i, table, level, beta, rivals)) could[i] = 1;
    }
  }
  return could;
}

function criticalAgainst(i: number, table: ComparedTable, level: number, beta: number, rivals: Float64Array): number {
  const { goodness, errors, differenceUncertainty, degreesOfFreedom } = table;
  const n = goodness.length;
  const [others, itself] = [new Float64Array(n * n), new Float64Array(n * n)];
  for (let j = 0; j < n; j++) {
    const s = differenceUncertainty[j * n + i]!;
    if (s > 0) others[j * n + i] = itself[i * n + j] = 1 / s;
  }
  const farthest = largestScoreQuantile(errors, { n, precision: itself, degreesOfFreedom }, 1 - beta);
  const setBack = Float64Array.from(goodness, (value, j) => {
    const s = differenceUncertainty[i * n + j]!;
    return Math.min(0, value - goodness[i]! + (s > 0 ? s * studentOfScore(farthest, degreesOfFreedom[i * n + j]!) : 0));
  });
  for (let from = 0; from < errors.length; from += n) for (let j = 0; j < n; j++) rivals[from + j] = errors[from + j]! + setBack[j]!;
  return largestScoreQuantile(rivals, { n, precision: others, degreesOfFreedom }, level + beta);
}

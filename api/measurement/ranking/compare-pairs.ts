import { largestScoreQuantile } from './largest-scores.js';
import type { PairScales } from './largest-scores.js';
import { normalScore } from './normal-score.js';

/** Values of n entries with the tail of each difference. */
export interface ComparedTable {
  /** n values, more is better [any one unit] */
  readonly goodness: Float64Array;
  /** B·n drawn deviations from the truth, draw by draw [same unit] */
  readonly errors: Float64Array;
  /** n·n: s_ij at i·n + j, 0 for a pair without uncertainty [same unit] */
  readonly differenceUncertainty: Float64Array;
  /** n·n: ν_ij [1] */
  readonly degreesOfFreedom: Float64Array;
}

export interface PairComparison {
  /** n·n: 1 at i·n + j when i is told to be better than j */
  readonly isAhead: Uint8Array;
  /** normal score that a pair had to pass in the first step, and in the last; null without a pair to compare */
  readonly firstCritical: number | null;
  readonly criticalValue: number | null;
}

/**
 * Tells which entries differ, all pairs at once, each judged by its own tail, with one joint error rate.
 *
 * Formula: i is ahead of j when z((g_i − g_j)/s_ij; ν_ij) > c, c the level's quantile of the largest such score of the draws over the ordered pairs that are open. Pairs told apart leave with their
 * reverse, whose difference lies as far on the other side, and c is taken again, until none leaves (step-down). Pairs without uncertainty are told apart by any difference
 * @param table values, draws and tails
 * @param level joint level in (0, 1) [1]
 * @returns isAhead with the critical scores of the first and the last step [1]
 * @throws nothing: the caller checks the shapes
 * @see WESTFALL-YOUNG-1993
 * @see GAMES-HOWELL-1976
 * @see MRSW-2023
 * @example comparePairs(compared, 0.95).isAhead.length // 4
 */
export function comparePairs(table: ComparedTable, level: number): PairComparison {
  const { goodness, errors, differenceUncertainty, degreesOfFreedom } = table;
  const n = goodness.length;
  const isAhead = new Uint8Array(n * n);
  const pairs = { n, precision: new Float64Array(n * n), degreesOfFreedom };
  let open = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const s = differenceUncertainty[i * n + j]!;
      if (i === j) continue;
      if (s > 0) {
        pairs.precision[i * n + j] = 1 / s;
        open += 1;
      } else if (goodness[i]! > goodness[j]!) isAhead[i * n + j] = 1;
    }
  }
  if (open === 0) return { isAhead, firstCritical: null, criticalValue: null };
  const firstCritical = largestScoreQuantile(errors, pairs, level);
  for (let criticalValue = firstCritical; ;) {
    const told = tellApart(goodness, pairs, isAhead, criticalValue);
    if (told === 0 || told === open) return { isAhead, firstCritical, criticalValue };
    open -= told;
    criticalValue = largestScoreQuantile(errors, pairs, level);
  }
}

/** Closes the pairs whose score is above the critical value, with their reverse; gives how many. */
function tellApart(goodness: Float64Array, { n, precision, degreesOfFreedom }: PairScales, isAhead: Uint8Array, critical: number): number {
  let told = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const at = i * n + j;
      const t = (goodness[i]! - goodness[j]!) * precision[at]!;
      if (precision[at] === 0 || t <= critical || normalScore(t, degreesOfFreedom[at]!) <= critical) continue;
      isAhead[at] = 1;
      precision[at] = precision[j * n + i] = 0;
      told += 2;
    }
  }
  return told;
}

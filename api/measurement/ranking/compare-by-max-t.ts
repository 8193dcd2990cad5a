import { largestDifferenceQuantile } from './largest-differences.js';

export interface MaxTComparison {
  /** n·n: 1 at i·n + j when i is told to be better than j */
  readonly isAhead: Uint8Array;
  /** critical value of the last step; null without a pair to compare */
  readonly criticalValue: number | null;
}

/**
 * Tells which entries differ, all pairs at once, with one joint error rate.
 *
 * Formula: i is ahead of j when (g_i − g_j)/s_ij > c, c the level's quantile of the largest standardised difference of the draws over the ordered pairs
 * that are still open; pairs told apart leave, and c is taken again, until none leaves (step-down). Pairs without uncertainty are told apart by any difference
 * @param goodness n values, more is better [any one unit]
 * @param errors B·n drawn deviations from the truth, draw by draw [same unit]
 * @param differenceUncertainty n·n: s_ij at i·n + j, 0 for a pair without uncertainty [same unit]
 * @param level joint level in (0, 1) [1]
 * @returns isAhead and the last critical value [1]; no pair is told apart the wrong way with at least the level's probability
 * @throws nothing: the caller checks the shapes
 * @see MRSW-2023
 * @example compareByMaxT(Float64Array.of(9, 1), Float64Array.of(0.1, 0), Float64Array.of(0, 1, 1, 0), 0.95).isAhead // [0, 1, 0, 0]
 */
export function compareByMaxT(
  goodness: Float64Array,
  errors: Float64Array,
  differenceUncertainty: Float64Array,
  level: number,
): MaxTComparison {
  const n = goodness.length;
  const isAhead = new Uint8Array(n * n);
  const precision = new Float64Array(n * n);
  let open = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const s = differenceUncertainty[i * n + j]!;
      if (i === j) continue;
      if (s > 0) {
        precision[i * n + j] = 1 / s;
        open += 1;
      } else if (goodness[i]! > goodness[j]!) isAhead[i * n + j] = 1;
    }
  }
  if (open === 0) return { isAhead, criticalValue: null };
  for (;;) {
    const criticalValue = largestDifferenceQuantile(errors, precision, n, level);
    if (tellApart(goodness, precision, isAhead, criticalValue) === 0) return { isAhead, criticalValue };
  }
}

/** Closes the pairs whose difference is above the critical value; gives how many. */
function tellApart(goodness: Float64Array, precision: Float64Array, isAhead: Uint8Array, criticalValue: number): number {
  const n = goodness.length;
  let told = 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const p = precision[i * n + j]!;
      if (p === 0 || (goodness[i]! - goodness[j]!) * p <= criticalValue) continue;
      isAhead[i * n + j] = 1;
      precision[i * n + j] = 0;
      told += 1;
    }
  }
  return told;
}

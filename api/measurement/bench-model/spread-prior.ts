import type { BenchSeries, Spreads } from './bench-series.js';

/** Degrees of freedom of the prior of a spread: heavy enough in its tail to give way to what the season shows. */
const PRIOR_DEGREES = 4;
/** Relative reproducibility where the method states none (common practice). */
export const USUAL_REPRODUCIBILITY = 0.01;

/**
 * Scale of the prior of each cause: the reproducibility, shared out evenly over rig, tester and submission.
 *
 * Formula: A = s_R/√3
 * @param reproducibility s_R [1]; null where the method states none
 * @returns A [1]
 * @throws nothing
 * @see GELMAN-2006
 * @example priorScale(0.03) // 0.01732…
 */
export function priorScale(reproducibility: number | null): number {
  return (reproducibility ?? USUAL_REPRODUCIBILITY) / Math.sqrt(3);
}

/**
 * Log density of a set of spreads before the season is looked at.
 *
 * Formula: Σ −5/2·ln(1 + (σ/A)²/4) − Σ told ½d(ln σ² + s²/σ²): half-t of four degrees of freedom times the likelihood of s² with d degrees each
 * @param spreads σ [1]
 * @param scale A above 0 [1]
 * @param told standard deviations s [1] with degrees of freedom d
 * @returns log density but for a constant; −∞ where what is told excludes a spread
 * @throws nothing
 * @see GELMAN-2006
 * @example logPrior({ rig: 0, tester: 0, submission: 0 }, 0.01, []) // 0
 */
export function logPrior(spreads: Spreads, scale: number, told: BenchSeries['told']): number {
  let sum = 0;
  for (const sd of [spreads.rig, spreads.tester, spreads.submission])
    sum -= ((PRIOR_DEGREES + 1) / 2) * Math.log1p((sd / scale) ** 2 / PRIOR_DEGREES);
  for (const { cause, relativeSd, degreesOfFreedom } of told) {
    const variance = spreads[cause] ** 2;
    if (variance === 0 && relativeSd > 0) return -Infinity;
    if (variance > 0) sum -= (degreesOfFreedom / 2) * (Math.log(variance) + relativeSd ** 2 / variance);
  }
  return sum;
}

import { compensatedSum } from '../summary/compensated-sum.js';
import type { MeanWithUncertainty } from './consensus.js';

/**
 * Mean weighted by the inverse of within plus between variance.
 *
 * Formula: w = 1/(u² + τ²), x̃ = Σwx/Σw, Q = Σw(x − x̃)²
 * @param means means [one unit] with standard uncertainties [same unit]
 * @param betweenVariance τ² ≥ 0 [unit²]
 * @returns mean [same unit], weights and totalWeight [1/unit²], spread Q [1]
 * @throws nothing: the caller checks the means
 * @see COMMON-PRACTICE
 * @example weightedMean([{ mean: 1, standardUncertainty: 1 }, { mean: 3, standardUncertainty: 1 }], 0) // { mean: 2, weights: [1, 1], totalWeight: 2, spread: 2 }
 */
export function weightedMean(
  means: readonly MeanWithUncertainty[],
  betweenVariance: number,
): { mean: number; weights: number[]; totalWeight: number; spread: number } {
  const weights = means.map(({ standardUncertainty }) => 1 / (standardUncertainty ** 2 + betweenVariance));
  const totalWeight = compensatedSum(weights);
  const mean = compensatedSum(means.map((point, i) => weights[i]! * point.mean)) / totalWeight;
  const spread = compensatedSum(means.map((point, i) => weights[i]! * (point.mean - mean) ** 2));
  return { mean, weights, totalWeight, spread };
}

import type { Consensus, MeanWithUncertainty } from '../../../../api/measurement/consensus/consensus.js';
import { requireMeans } from '../../../../api/measurement/consensus/require-means.js';
import { weightedMean } from '../../../../api/measurement/consensus/weighted-mean.js';

const ITERATIONS = 200;

/**
 * Consensus of several means with a between-submission variance.
 *
 * Formula: w = 1/(u² + τ²), x̃ = Σwx/Σw, τ² ≥ 0 solves Σw(x − x̃)² = k − 1; standard error 1/√Σw
 * @param means k ≥ 2 means [one unit] with standard uncertainties above 0 [same unit]
 * @returns mean, standardError [same unit], betweenVariance [unit²]; τ² is 0 when the means agree within their uncertainties
 * @throws MeasurementError 'measurement/too-few-readings' for k < 2; 'measurement/not-a-number'; 'consensus/no-uncertainty' for a standard uncertainty that is not above 0
 * @see MANDEL-PAULE-1970
 * @example mandelPaule([{ mean: 10, standardUncertainty: 1 }, { mean: 10, standardUncertainty: 1 }]).mean // 10
 */
export function mandelPaule(means: readonly MeanWithUncertainty[]): Consensus {
  requireMeans(means, 'mandelPaule');
  const range = Math.max(...means.map(({ mean }) => mean)) - Math.min(...means.map(({ mean }) => mean));
  const isAgreed = weightedMean(means, 0).spread <= means.length - 1;
  // At τ² = k·range² the spread is below 1, so the solution lies in between.
  let [low, high] = [0, isAgreed ? 0 : range * range * means.length];
  for (let i = 0; i < ITERATIONS && high - low > 0; i++) {
    const middle = (low + high) / 2;
    if (weightedMean(means, middle).spread > means.length - 1) low = middle;
    else high = middle;
  }
  const { mean, totalWeight } = weightedMean(means, high);
  return { mean, betweenVariance: high, standardError: 1 / Math.sqrt(totalWeight) };
}

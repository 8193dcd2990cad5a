import { compensatedSum } from '../../../../api/measurement/summary/compensated-sum.js';
import type { Consensus, MeanWithUncertainty } from '../../../../api/measurement/consensus/consensus.js';
import { requireMeans } from '../../../../api/measurement/consensus/require-means.js';
import { weightedMean } from '../../../../api/measurement/consensus/weighted-mean.js';

/** A consensus with Cochran's Q, the spread of the means over what their uncertainties allow. */
export interface ConsensusByMoments extends Consensus {
  readonly q: number;
}

/**
 * Consensus of several means by moments; the cross-check of Mandel and Paule's.
 *
 * Formula: w = 1/u², Q = Σw(x − x̄_w)², τ² = max(0, (Q − (k − 1))/(Σw − Σw²/Σw)); then weights 1/(u² + τ²), standard error 1/√Σ
 * @param means k ≥ 2 means [one unit] with standard uncertainties above 0 [same unit]
 * @returns mean, standardError [same unit], betweenVariance [unit²], q [1]
 * @throws MeasurementError 'measurement/too-few-readings' for k < 2; 'measurement/not-a-number'; 'consensus/no-uncertainty' for a standard uncertainty that is not above 0
 * @see DERSIMONIAN-LAIRD-1986
 * @example derSimonianLaird([{ mean: 10, standardUncertainty: 1 }, { mean: 10, standardUncertainty: 1 }]).q // 0
 */
export function derSimonianLaird(means: readonly MeanWithUncertainty[]): ConsensusByMoments {
  requireMeans(means, 'derSimonianLaird');
  const { weights, totalWeight, spread: q } = weightedMean(means, 0);
  const squares = compensatedSum(weights.map((weight) => weight * weight));
  const betweenVariance = Math.max(0, (q - (means.length - 1)) / (totalWeight - squares / totalWeight));
  const final = weightedMean(means, betweenVariance);
  return { mean: final.mean, betweenVariance, standardError: 1 / Math.sqrt(final.totalWeight), q };
}

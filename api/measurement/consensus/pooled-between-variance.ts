import { compensatedSum } from '../summary/compensated-sum.js';
import { MeasurementError } from '../errors.js';
import type { MeanWithUncertainty } from './consensus.js';
import { requireMeans } from './require-means.js';
import { weightedMean } from './weighted-mean.js';

export interface PooledBetweenVariance {
  /** relative variance between submissions of one variant [1] */
  readonly relativeVariance: number;
  /** Σ(k − 1) over the shared variants */
  readonly degreesOfFreedom: number;
}

/**
 * Relative variance between submissions, from all variants that more than one submission shares: what a rig and a tester add beyond repeatability.
 *
 * Formula: of relative means x/x̃ with u/x̃: τ² = max(0, Σ(Q − (k − 1))/Σ(Σw − Σw²/Σw)), sums over variants
 * @param variants for each shared variant its k ≥ 2 submission means, above 0 [any one unit per variant], with standard uncertainties
 * @returns relativeVariance, degreesOfFreedom [1]; 0 and 0 when no variant is shared
 * @throws MeasurementError as `mandelPaule` for a variant; 'consensus/not-positive' for a consensus that is not above 0
 * @see DERSIMONIAN-LAIRD-1986
 * @example pooledBetweenVariance([[{ mean: 98, standardUncertainty: 0.1 }, { mean: 102, standardUncertainty: 0.1 }]]).degreesOfFreedom // 1
 */
export function pooledBetweenVariance(variants: readonly (readonly MeanWithUncertainty[])[]): PooledBetweenVariance {
  if (variants.length === 0) return { relativeVariance: 0, degreesOfFreedom: 0 };
  const moments = variants.map((means) => {
    requireMeans(means, 'pooledBetweenVariance');
    const { mean: centre } = weightedMean(means, 0);
    if (!(centre > 0))
      throw new MeasurementError(
        'consensus/not-positive',
        `pooledBetweenVariance: a consensus is ${centre}, expected above 0. Relative effects need quantities above 0.`,
      );
    const relative = means.map(({ mean, standardUncertainty }) => ({
      mean: mean / centre,
      standardUncertainty: standardUncertainty / centre,
    }));
    const { weights, totalWeight, spread } = weightedMean(relative, 0);
    const squares = compensatedSum(weights.map((weight) => weight * weight));
    return { excess: spread - (means.length - 1), scale: totalWeight - squares / totalWeight };
  });
  const excess = compensatedSum(moments.map((moment) => moment.excess));
  const scale = compensatedSum(moments.map((moment) => moment.scale));
  return {
    relativeVariance: Math.max(0, excess / scale),
    degreesOfFreedom: variants.reduce((sum, means) => sum + means.length - 1, 0),
  };
}

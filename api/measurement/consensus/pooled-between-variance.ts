import { compensatedSum } from '../summary/compensated-sum.js';
import { chiSquareQuantile } from '../distributions/chi-square-distribution.js';
import { MeasurementError } from '../errors.js';
import type { MeanWithUncertainty } from './consensus.js';
import { requireMeans } from './require-means.js';
import { weightedMean } from './weighted-mean.js';

export interface PooledBetweenVariance {
  /** relative variance between submissions of one variant [1] */
  readonly relativeVariance: number;
  /** Σ(k − 1) over the shared variants that are pooled */
  readonly degreesOfFreedom: number;
  /** positions of the variants that disagree beyond what the others show, so that a mixed-up spool does not widen everybody's interval */
  readonly leftOut: readonly number[];
}

/** Level at which a variant's disagreement is no longer that of the others, and the largest share that may be left out (common practice). */
const STRANGER = 0.999;
const MOST_LEFT_OUT = 0.25;

interface Moment {
  readonly position: number;
  readonly relative: readonly MeanWithUncertainty[];
  readonly excess: number;
  readonly scale: number;
}

/**
 * Relative variance between submissions, from all variants that more than one submission shares: what a rig and a tester add beyond repeatability.
 *
 * Formula: of relative means x/x̃ with u/x̃: τ² = max(0, Σ(Q − (k − 1))/Σ(Σw − Σw²/Σw)), sums over variants; one at a time, the variant whose Q under the τ² of the
 * others is furthest beyond χ²(0.999; k − 1) is left out, a quarter of them at most
 * @param variants for each shared variant its k ≥ 2 submission means, above 0 [any one unit per variant], with standard uncertainties
 * @returns relativeVariance, degreesOfFreedom [1]; 0 and 0 when no variant is shared
 * @throws MeasurementError as `mandelPaule` for a variant; 'consensus/not-positive' for a consensus that is not above 0
 * @see DERSIMONIAN-LAIRD-1986
 * @example pooledBetweenVariance([[{ mean: 98, standardUncertainty: 0.1 }, { mean: 102, standardUncertainty: 0.1 }]]).degreesOfFreedom // 1
 */
export function pooledBetweenVariance(variants: readonly (readonly MeanWithUncertainty[])[]): PooledBetweenVariance {
  const all = variants.map(momentOf);
  let kept: readonly Moment[] = all;
  for (;;) {
    const stranger = strangestOf(kept);
    if (!stranger || all.length - kept.length + 1 > MOST_LEFT_OUT * all.length) break;
    kept = kept.filter((moment) => moment !== stranger);
  }
  return {
    relativeVariance: betweenOf(kept),
    degreesOfFreedom: kept.reduce((sum, { relative }) => sum + relative.length - 1, 0),
    leftOut: all.filter((moment) => !kept.includes(moment)).map(({ position }) => position),
  };
}

function momentOf(means: readonly MeanWithUncertainty[], position: number): Moment {
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
  return { position, relative, excess: spread - (means.length - 1), scale: totalWeight - squares / totalWeight };
}

function betweenOf(moments: readonly Moment[]): number {
  if (moments.length === 0) return 0;
  return Math.max(0, compensatedSum(moments.map(({ excess }) => excess)) / compensatedSum(moments.map(({ scale }) => scale)));
}

/** The variant that disagrees most under what the others show, if that is beyond the level. */
function strangestOf(moments: readonly Moment[]): Moment | null {
  if (moments.length < 2) return null;
  const strangeness = moments.map((moment) => {
    const others = betweenOf(moments.filter((other) => other !== moment));
    return weightedMean(moment.relative, others).spread / chiSquareQuantile(STRANGER, moment.relative.length - 1);
  });
  const most = Math.max(...strangeness);
  return most > 1 ? (moments[strangeness.indexOf(most)] ?? null) : null;
}

import { MeasurementError } from '../errors.js';
import { sampleSummary } from '../summary/sample-summary.js';
import type { SampleSummary } from '../summary/sample-summary.js';

/** Whether the two samples are taken to share one variance. */
export type RatioVariance = 'separate' | 'pooled';

export interface RatioInputs {
  a: number;
  b: number;
  /** variances of the two means, not of the readings */
  varianceA: number;
  varianceB: number;
  ratio: number;
  degreesOfFreedom: number;
}

/**
 * Means, variances of the means and degrees of freedom for inference about a ratio.
 *
 * Formula: separate: ν = (u_a² + r²u_b²)²/(u_a⁴/(n_a − 1) + r⁴u_b⁴/(n_b − 1)) at r, by default a/b; pooled: ν = n_a + n_b − 2
 * @param numerator readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param denominator readings, n ≥ 2, or their mean, sd and n [same unit]
 * @param variance 'separate' or 'pooled'
 * @param atRatio r at which ν is taken [1]
 * @returns a, b [same unit], varianceA, varianceB [unit²], ratio and degreesOfFreedom [1]; n_a + n_b − 2 where neither sample has any spread
 * @throws MeasurementError 'figures/zero-denominator'; 'measurement/too-few-readings' when n < 2; 'measurement/not-a-number'
 * @see HAUSCHKE-1999
 * @example ratioInputs({ mean: 38.2, sd: 2.1, n: 10 }, { mean: 52.7, sd: 1.8, n: 10 }, 'pooled').degreesOfFreedom // 18
 */
export function ratioInputs(
  numerator: readonly number[] | SampleSummary,
  denominator: readonly number[] | SampleSummary,
  variance: RatioVariance,
  atRatio?: number,
): RatioInputs {
  const [top, bottom] = [sampleSummary(numerator, 'numerator'), sampleSummary(denominator, 'denominator')];
  const ratio = top.mean / bottom.mean;
  if (!Number.isFinite(ratio)) {
    throw new MeasurementError(
      'figures/zero-denominator',
      `ratioInputs: the mean of the denominator is ${bottom.mean}, expected a value that can be divided by. Leave the ratio out.`,
    );
  }
  const bothDegrees = top.n + bottom.n - 2;
  const pooled = ((top.n - 1) * top.sd ** 2 + (bottom.n - 1) * bottom.sd ** 2) / bothDegrees;
  const varianceA = (variance === 'pooled' ? pooled : top.sd ** 2) / top.n;
  const varianceB = (variance === 'pooled' ? pooled : bottom.sd ** 2) / bottom.n;
  const shareB = (atRatio ?? ratio) ** 2 * varianceB;
  const isPlain = variance === 'pooled' || varianceA + shareB === 0;
  const degreesOfFreedom = isPlain
    ? bothDegrees
    : (varianceA + shareB) ** 2 / (varianceA ** 2 / (top.n - 1) + shareB ** 2 / (bottom.n - 1));
  return { a: top.mean, b: bottom.mean, varianceA, varianceB, ratio, degreesOfFreedom };
}

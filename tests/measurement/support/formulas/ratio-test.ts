import { tCdf } from '../../../../api/measurement/distributions/t-distribution.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';
import type { SampleSummary } from '../../../../api/measurement/summary/sample-summary.js';
import { ratioInputs } from '../../../../api/measurement/figures/ratio-inputs.js';
import type { RatioVariance } from '../../../../api/measurement/figures/ratio-inputs.js';

export interface RatioTest {
  t: number;
  degreesOfFreedom: number;
  /** probability of so low a t if the ratio were ρ₀ */
  pLess: number;
  pGreater: number;
}

/**
 * Tests a ratio of two means against a stated value.
 *
 * Formula: t = (a − ρ₀b)/√(u_a² + ρ₀²u_b²)
 * @param numerator readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param denominator readings, n ≥ 2, or their mean, sd and n [same unit]
 * @param statedRatio ρ₀ [1]
 * @param variance 'separate' or 'pooled'
 * @returns t, degreesOfFreedom, pLess and pGreater [1]
 * @throws MeasurementError 'measurement/no-spread' when neither sample has any spread; 'figures/zero-denominator'; 'measurement/too-few-readings' when n < 2
 * @see HAUSCHKE-1999
 * @example ratioTest([9, 10, 11], [19, 20, 21], 0.5).t // 0
 */
export function ratioTest(
  numerator: readonly number[] | SampleSummary,
  denominator: readonly number[] | SampleSummary,
  statedRatio: number,
  variance: RatioVariance = 'separate',
): RatioTest {
  const { a, b, varianceA, varianceB, degreesOfFreedom } = ratioInputs(numerator, denominator, variance, statedRatio);
  const spread = varianceA + statedRatio * statedRatio * varianceB;
  if (!(spread > 0)) {
    throw new MeasurementError(
      'measurement/no-spread',
      'ratioTest: neither sample has any spread, so no test is possible. Compare the means as they are.',
    );
  }
  const t = (a - statedRatio * b) / Math.sqrt(spread);
  return { t, degreesOfFreedom, pLess: tCdf(t, degreesOfFreedom), pGreater: tCdf(-t, degreesOfFreedom) };
}

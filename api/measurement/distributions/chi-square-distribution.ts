import cdf from '@stdlib/stats-base-dists-chisquare-cdf';
import quantile from '@stdlib/stats-base-dists-chisquare-quantile';
import { requireArgument, requireFiniteDegreesOfFreedom, requireProbability } from './require-domain.js';

/**
 * Probability that a chi-square variable with ν degrees of freedom is at most x.
 *
 * Formula: F_χ²(x; ν)
 * @param x argument; 0 or less gives 0 [1]
 * @param degreesOfFreedom ν > 0, finite [1]
 * @returns probability in [0, 1] [1]
 * @throws MeasurementError 'distributions/out-of-domain' when x is NaN or ν is not a finite number above 0
 * @see NIST-EHANDBOOK 1.3.6.6.6
 * @example chiSquareCdf(0, 3) // 0
 */
export function chiSquareCdf(x: number, degreesOfFreedom: number): number {
  requireArgument(x, 'chiSquareCdf');
  requireFiniteDegreesOfFreedom(degreesOfFreedom, 'chiSquareCdf');
  return x <= 0 ? 0 : x === Infinity ? 1 : cdf(x, degreesOfFreedom);
}

/**
 * Value that a chi-square variable with ν degrees of freedom stays below with probability p.
 *
 * Formula: F_χ²⁻¹(p; ν)
 * @param p probability in (0, 1) [1]
 * @param degreesOfFreedom ν > 0, finite [1]
 * @returns quantile [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < p < 1 and ν is a finite number above 0
 * @see NIST-EHANDBOOK 1.3.6.7.4
 * @example chiSquareQuantile(0.95, 1) // 3.8414…
 */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  requireProbability(p, 'chiSquareQuantile');
  requireFiniteDegreesOfFreedom(degreesOfFreedom, 'chiSquareQuantile');
  return quantile(p, degreesOfFreedom);
}

import cdf from '@stdlib/stats-base-dists-t-cdf';
import quantile from '@stdlib/stats-base-dists-t-quantile';
import { normalCdf, normalQuantile } from './normal-distribution.js';
import { requireArgument, requireDegreesOfFreedom, requireProbability } from './require-domain.js';

/**
 * Probability that Student's t with ν degrees of freedom is at most x.
 *
 * Formula: F_t(x; ν); the normal distribution for ν = ∞
 * @param x argument [1]
 * @param degreesOfFreedom ν > 0, not necessarily whole; Infinity allowed [1]
 * @returns probability in [0, 1] [1]
 * @throws MeasurementError 'distributions/out-of-domain' when x is NaN or ν is not above 0
 * @see NIST-EHANDBOOK 1.3.6.6.4
 * @example tCdf(0, 9) // 0.5
 */
export function tCdf(x: number, degreesOfFreedom: number): number {
  requireArgument(x, 'tCdf');
  requireDegreesOfFreedom(degreesOfFreedom, 'tCdf');
  return degreesOfFreedom === Infinity ? normalCdf(x) : cdf(x, degreesOfFreedom);
}

/**
 * Value that Student's t with ν degrees of freedom stays below with probability p.
 *
 * Formula: F_t⁻¹(p; ν); the normal quantile for ν = ∞
 * @param p probability in (0, 1) [1]
 * @param degreesOfFreedom ν > 0, not necessarily whole; Infinity allowed [1]
 * @returns quantile [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < p < 1 and ν > 0
 * @see NIST-EHANDBOOK 1.3.6.7.2
 * @example tQuantile(0.975, 9) // 2.2621…
 */
export function tQuantile(p: number, degreesOfFreedom: number): number {
  requireProbability(p, 'tQuantile');
  requireDegreesOfFreedom(degreesOfFreedom, 'tQuantile');
  return degreesOfFreedom === Infinity ? normalQuantile(p) : quantile(p, degreesOfFreedom);
}

import cdf from '@stdlib/stats-base-dists-normal-cdf';
import quantile from '@stdlib/stats-base-dists-normal-quantile';
import { requireArgument, requireProbability } from './require-domain.js';

/**
 * Probability that a standard normal variable is at most x.
 *
 * Formula: Φ(x)
 * @param x argument [1]
 * @returns Φ(x) in [0, 1] [1]
 * @throws MeasurementError 'distributions/out-of-domain' when x is NaN
 * @see NIST-EHANDBOOK 1.3.6.6.1
 * @example normalCdf(0) // 0.5
 */
export function normalCdf(x: number): number {
  requireArgument(x, 'normalCdf');
  return cdf(x, 0, 1);
}

/**
 * Value that a standard normal variable stays below with probability p.
 *
 * Formula: Φ⁻¹(p)
 * @param p probability in (0, 1) [1]
 * @returns Φ⁻¹(p) [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < p < 1
 * @see NIST-EHANDBOOK 1.3.6.6.1
 * @example normalQuantile(0.975) // 1.9599…
 */
export function normalQuantile(p: number): number {
  requireProbability(p, 'normalQuantile');
  return quantile(p, 0, 1);
}

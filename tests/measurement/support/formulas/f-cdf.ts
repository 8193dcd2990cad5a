import cdf from '@stdlib/stats-base-dists-f-cdf';
import { chiSquareCdf } from '../../../../api/measurement/distributions/chi-square-distribution.js';
import {
  requireArgument,
  requireDegreesOfFreedom,
  requireFiniteDegreesOfFreedom,
} from '../../../../api/measurement/distributions/require-domain.js';

/**
 * Probability that an F variable is at most x.
 *
 * Formula: F_F(x; ν₁, ν₂); chi-square of ν₁x for ν₂ = ∞
 * @param x argument; 0 or less gives 0 [1]
 * @param numeratorDegreesOfFreedom ν₁ > 0, finite [1]
 * @param denominatorDegreesOfFreedom ν₂ > 0; Infinity allowed [1]
 * @returns probability in [0, 1] [1]
 * @throws MeasurementError 'distributions/out-of-domain' when x is NaN or a ν is not above 0
 * @see NIST-EHANDBOOK 1.3.6.6.5
 * @example fCdf(1, 5, 5) // 0.5
 */
export function fCdf(x: number, numeratorDegreesOfFreedom: number, denominatorDegreesOfFreedom: number): number {
  requireArgument(x, 'fCdf');
  requireFiniteDegreesOfFreedom(numeratorDegreesOfFreedom, 'fCdf');
  requireDegreesOfFreedom(denominatorDegreesOfFreedom, 'fCdf');
  if (denominatorDegreesOfFreedom === Infinity) return chiSquareCdf(x * numeratorDegreesOfFreedom, numeratorDegreesOfFreedom);
  return x === Infinity ? 1 : cdf(x, numeratorDegreesOfFreedom, denominatorDegreesOfFreedom);
}

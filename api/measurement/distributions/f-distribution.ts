import quantile from '@stdlib/stats-base-dists-f-quantile';
import { chiSquareQuantile } from './chi-square-distribution.js';
import { requireDegreesOfFreedom, requireFiniteDegreesOfFreedom, requireProbability } from './require-domain.js';

/**
 * Value that an F variable stays below with probability p.
 *
 * Formula: F_F⁻¹(p; ν₁, ν₂); chi-square quantile over ν₁ for ν₂ = ∞
 * @param p probability in (0, 1) [1]
 * @param numeratorDegreesOfFreedom ν₁ > 0, finite [1]
 * @param denominatorDegreesOfFreedom ν₂ > 0; Infinity allowed [1]
 * @returns quantile [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < p < 1 and both ν are above 0
 * @see NIST-EHANDBOOK 1.3.6.7.3
 * @example fQuantile(0.95, 2, 10) // 4.1028…
 */
export function fQuantile(p: number, numeratorDegreesOfFreedom: number, denominatorDegreesOfFreedom: number): number {
  requireProbability(p, 'fQuantile');
  requireFiniteDegreesOfFreedom(numeratorDegreesOfFreedom, 'fQuantile');
  requireDegreesOfFreedom(denominatorDegreesOfFreedom, 'fQuantile');
  if (denominatorDegreesOfFreedom === Infinity) return chiSquareQuantile(p, numeratorDegreesOfFreedom) / numeratorDegreesOfFreedom;
  return quantile(p, numeratorDegreesOfFreedom, denominatorDegreesOfFreedom);
}

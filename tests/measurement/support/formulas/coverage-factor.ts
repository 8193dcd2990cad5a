import { tQuantile } from '../../../../api/measurement/distributions/t-distribution.js';
import { requireDegreesOfFreedom } from '../../../../api/measurement/distributions/require-domain.js';

/**
 * Coverage factor for a level of confidence, with the effective degrees of freedom cut to a whole number.
 *
 * Formula: k = t((1 + level)/2; ⌊ν_eff⌋), at least one degree of freedom
 * @param effectiveDegreesOfFreedom ν_eff > 0, Infinity allowed [1]
 * @param level level of confidence in (0, 1) [1]
 * @returns k [1]
 * @throws MeasurementError 'distributions/out-of-domain' for a level or ν_eff outside its range
 * @see JCGM-100 G.4.1
 * @example coverageFactor(16.6, 0.99) // 2.9207…
 */
export function coverageFactor(effectiveDegreesOfFreedom: number, level = 0.95): number {
  requireDegreesOfFreedom(effectiveDegreesOfFreedom, 'coverageFactor');
  return tQuantile((1 + level) / 2, Math.max(1, Math.floor(effectiveDegreesOfFreedom)));
}

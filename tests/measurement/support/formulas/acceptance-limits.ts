import { normalQuantile } from '../../../../api/measurement/distributions/normal-distribution.js';
import { requireProbability } from '../../../../api/measurement/distributions/require-domain.js';
import { requireFinite, requireNotNegative } from '../../../../api/measurement/figures/require-positive.js';

/**
 * Lowest measured value that shows conformity with a lower limit at a stated probability.
 *
 * Formula: A = T_L + u·Φ⁻¹(p)
 * @param lowLimit T_L [any one unit]
 * @param standardUncertainty u ≥ 0 [same unit]
 * @param probability p in (0, 1) [1]
 * @returns acceptance limit A [same unit]
 * @throws MeasurementError 'distributions/out-of-domain' for p outside (0, 1); 'figures/negative' for u; 'measurement/not-a-number'
 * @see JCGM-106 8.3
 * @example acceptanceLimit(45, 0.6, 0.95) // 45.9869…
 */
export function acceptanceLimit(lowLimit: number, standardUncertainty: number, probability: number): number {
  requireFinite(lowLimit, 'lowLimit', 'acceptanceLimit');
  requireProbability(probability, 'acceptanceLimit');
  requireNotNegative(standardUncertainty, 'standardUncertainty', 'acceptanceLimit');
  return lowLimit + standardUncertainty * normalQuantile(probability);
}

/**
 * Acceptance limit above a lower limit by a guard band that is a multiple of the expanded uncertainty.
 *
 * Formula: A = T_L + r U
 * @param lowLimit T_L [any one unit]
 * @param expandedUncertainty U ≥ 0 [same unit]
 * @param multiplier r: 0 is simple acceptance, 1 a full guard band [1]
 * @returns acceptance limit A [same unit]
 * @throws MeasurementError 'figures/negative' for U or r; 'measurement/not-a-number'
 * @see JCGM-106 8.3
 * @example guardBandedLimit(45, 1.2, 1) // 46.2
 */
export function guardBandedLimit(lowLimit: number, expandedUncertainty: number, multiplier: number): number {
  requireFinite(lowLimit, 'lowLimit', 'guardBandedLimit');
  requireNotNegative(expandedUncertainty, 'expandedUncertainty', 'guardBandedLimit');
  requireNotNegative(multiplier, 'multiplier', 'guardBandedLimit');
  return lowLimit + multiplier * expandedUncertainty;
}

import { DENIER_PER_PE_NUMBER } from '../../../../api/measurement/claims/pe-number.js';
import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';

/**
 * PE number of a linear density, as computed; it is never moved to a number that shops list.
 *
 * Formula: denier/200
 * @param denier linear density, above 0 [denier]
 * @returns PE number [1]
 * @throws MeasurementError 'figures/not-positive' unless finite and above 0
 * @see PE-NUMBER-TABLE
 * @example peNumberOfDenier(250) // 1.25
 */
export function peNumberOfDenier(denier: number): number {
  requirePositive(denier, 'denier', 'peNumberOfDenier');
  return denier / DENIER_PER_PE_NUMBER;
}

import { MeasurementError } from '../errors.js';
import { requireNotNegative } from '../figures/require-positive.js';

/**
 * Measured value as a share of what is claimed.
 *
 * Formula: 100 measured/claimed
 * @param measured measured value, 0 or more [any one unit]
 * @param claimed claimed value, above 0 [same unit]
 * @returns ratio [%]
 * @throws MeasurementError 'claims/zero-claim' when the claim is not a finite number above 0; 'figures/negative' for the measured value
 * @see COMMON-PRACTICE
 * @example claimRatioPercent(0.3, 0.12) // 250
 */
export function claimRatioPercent(measured: number, claimed: number): number {
  requireNotNegative(measured, 'measured', 'claimRatioPercent');
  if (!(claimed > 0 && claimed < Infinity)) {
    throw new MeasurementError(
      'claims/zero-claim',
      `claimRatioPercent: the claim is ${claimed}, expected a finite number above 0. Leave the ratio out.`,
    );
  }
  return (100 * measured) / claimed;
}

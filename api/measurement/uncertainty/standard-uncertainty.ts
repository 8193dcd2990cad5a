import { requireNotNegative, requirePositive } from '../figures/require-positive.js';
import { standardDeviation } from '../summary/standard-deviation.js';

/**
 * Standard uncertainty of a mean from the scatter of its readings (type A).
 *
 * Formula: u = s/√n, with n − 1 degrees of freedom
 * @param values n ≥ 2 readings [any one unit]
 * @returns u [same unit]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'measurement/not-a-number'
 * @see JCGM-100 4.2.3
 * @example repeatabilityUncertainty([1, 2, 3]) // 0.5773…
 */
export function repeatabilityUncertainty(values: readonly number[]): number {
  return standardDeviation(values) / Math.sqrt(values.length);
}

/**
 * Standard uncertainty from a certificate's expanded one.
 *
 * Formula: u = U/k
 * @param expandedUncertainty U ≥ 0 [any one unit]
 * @param coverageFactor k > 0 [1]
 * @returns u [same unit]
 * @throws MeasurementError 'figures/negative' for U; 'figures/not-positive' for k
 * @see JCGM-100 4.3.3
 * @example calibrationUncertainty(0.4, 2) // 0.2
 */
export function calibrationUncertainty(expandedUncertainty: number, coverageFactor: number): number {
  requireNotNegative(expandedUncertainty, 'expandedUncertainty', 'calibrationUncertainty');
  requirePositive(coverageFactor, 'coverageFactor', 'calibrationUncertainty');
  return expandedUncertainty / coverageFactor;
}

/**
 * Standard uncertainty from the step of a display.
 *
 * Formula: u = a/√12, a the whole step
 * @param step a ≥ 0 [any one unit]
 * @returns u [same unit]
 * @throws MeasurementError 'figures/negative' for a step below 0 or not finite
 * @see JCGM-100 F.2.2.1
 * @example resolutionUncertainty(0.01) // 0.0028…
 */
export function resolutionUncertainty(step: number): number {
  requireNotNegative(step, 'step', 'resolutionUncertainty');
  return step / Math.sqrt(12);
}

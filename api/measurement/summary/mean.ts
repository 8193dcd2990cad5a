import { MeasurementError } from '../errors.js';
import { compensatedSum } from './compensated-sum.js';
import { requireReadings } from './require-readings.js';

/**
 * Arithmetic mean in two passes, so that a large common offset costs no digits.
 *
 * Formula: m₀ = Σx/n; x̄ = m₀ + Σ(x − m₀)/n
 * @param values n ≥ 1 readings [any one unit]
 * @returns the mean [same unit]
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'measurement/not-a-number' for a reading that is not finite or a sum beyond the number range
 * @see NIST-STRD
 * @example mean([1, 2, 6]) // 3
 */
export function mean(values: readonly number[]): number {
  requireReadings(values, 1, 'mean');
  const first = compensatedSum(values) / values.length;
  const result = first + compensatedSum(values.map((value) => value - first)) / values.length;
  if (!Number.isFinite(result)) {
    throw new MeasurementError('measurement/not-a-number', 'mean: the sum leaves the number range. Check the unit of the readings.');
  }
  return result;
}

import { compensatedSum } from './compensated-sum.js';
import { mean } from './mean.js';
import { requireReadings } from './require-readings.js';

/**
 * Sample standard deviation about the two-pass mean, with the correction for what the mean itself lost to rounding.
 *
 * Formula: s = √[(Σd² − (Σd)²/n)/(n − 1)], d = x − x̄
 * @param values n ≥ 2 readings [any one unit]
 * @returns s [same unit]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'measurement/not-a-number' for a reading that is not finite
 * @see NIST-STRD
 * @example standardDeviation([1, 2, 3]) // 1
 */
export function standardDeviation(values: readonly number[]): number {
  requireReadings(values, 2, 'standardDeviation');
  const average = mean(values);
  const deviations = values.map((value) => value - average);
  const leftOver = compensatedSum(deviations);
  const squares = compensatedSum(deviations.map((deviation) => deviation * deviation));
  return Math.sqrt(Math.max(0, squares - (leftOver * leftOver) / values.length) / (values.length - 1));
}

import { requireReadings } from './require-readings.js';

/**
 * Middle reading, or the mean of the two middle ones.
 *
 * Formula: x₍₍ₙ₊₁₎⁄₂₎ for odd n, (x₍ₙ⁄₂₎ + x₍ₙ⁄₂₊₁₎)/2 for even n
 * @param values n ≥ 1 readings [any one unit]
 * @returns the median [same unit]
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'measurement/not-a-number' for a reading that is not finite
 * @see NIST-EHANDBOOK 1.3.5.1
 * @example median([3, 1, 2, 10]) // 2.5
 */
export function median(values: readonly number[]): number {
  requireReadings(values, 1, 'median');
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)]!;
  const lower = sorted[Math.floor((sorted.length - 1) / 2)]!;
  return lower + (upper - lower) / 2;
}

import { MeasurementError } from '../errors.js';

/**
 * Refuses a set of readings that is too small or holds anything but finite numbers.
 *
 * Formula: n ≥ atLeast and every value finite.
 * @param values readings [any one unit]
 * @param atLeast smallest n that the caller can work with [1]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'measurement/too-few-readings' when n < atLeast; 'measurement/not-a-number' for NaN or an infinity
 * @see COMMON-PRACTICE
 * @example requireReadings([1, 2, 3], 2, 'mean')
 */
export function requireReadings(values: readonly number[], atLeast: number, where: string): void {
  if (values.length < atLeast) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      `${where}: found ${values.length} readings, expected at least ${atLeast}. Add readings or leave this figure out.`,
    );
  }
  const bad = values.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0) {
    throw new MeasurementError(
      'measurement/not-a-number',
      `${where}: reading ${bad + 1} is ${String(values[bad])}, expected a finite number. Correct or invalidate that reading.`,
    );
  }
}

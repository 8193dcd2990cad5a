import { mean as meanOf } from './mean.js';
import { median as medianOf } from './median.js';
import { standardDeviation } from './standard-deviation.js';

export interface Summary {
  n: number;
  mean: number;
  /** null for a single reading: one reading shows no spread */
  sd: number | null;
  /** null for a single reading and where the mean is not above zero */
  cvPercent: number | null;
  min: number;
  max: number;
  range: number;
  median: number;
}

/**
 * The usual figures of one set of readings.
 *
 * Formula: x̄ = Σx/n; s with n − 1; CV = 100 s/x̄; range = max − min
 * @param values n ≥ 1 readings [any one unit]
 * @returns n [1], mean, sd, min, max, range, median [same unit], cvPercent [%]; sd and cvPercent are null where they have no meaning
 * @throws MeasurementError 'measurement/too-few-readings' for none; 'measurement/not-a-number' for a reading that is not finite
 * @see NIST-STRD
 * @example summarise([1, 2, 3]) // { n: 3, mean: 2, sd: 1, cvPercent: 50, min: 1, max: 3, range: 2, median: 2 }
 */
export function summarise(values: readonly number[]): Summary {
  const mean = meanOf(values);
  const sd = values.length > 1 ? standardDeviation(values) : null;
  const min = values.reduce((a, b) => Math.min(a, b));
  const max = values.reduce((a, b) => Math.max(a, b));
  const cvPercent = sd !== null && mean > 0 ? (100 * sd) / mean : null;
  return { n: values.length, mean, sd, cvPercent, min, max, range: max - min, median: medianOf(values) };
}

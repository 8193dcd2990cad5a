import { MeasurementError } from '../errors.js';
import { mean } from './mean.js';
import { standardDeviation } from './standard-deviation.js';

/** A sample known by its figures alone. */
export interface SampleSummary {
  mean: number;
  sd: number;
  n: number;
}

/**
 * Takes a sample as readings or as mean, standard deviation and n, and gives the latter.
 *
 * Formula: x̄, s with n − 1
 * @param sample readings, n ≥ 2, or their mean, sd and n [any one unit]
 * @param name what the sample is, for the message
 * @returns mean, sd [same unit], n [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2 or not whole; 'measurement/not-a-number' for a figure that is not finite
 * @see STUDENT-1908
 * @example sampleSummary([1, 2, 3], 'numerator') // { mean: 2, sd: 1, n: 3 }
 */
export function sampleSummary(sample: readonly number[] | SampleSummary, name: string): SampleSummary {
  if (isReadings(sample)) return { mean: mean(sample), sd: standardDeviation(sample), n: sample.length };
  if (!(sample.n >= 2 && Number.isInteger(sample.n))) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      `${name}: n is ${sample.n}, expected a whole number of at least 2. Add readings.`,
    );
  }
  if (!Number.isFinite(sample.mean) || !(sample.sd >= 0 && sample.sd < Infinity)) {
    throw new MeasurementError(
      'measurement/not-a-number',
      `${name}: mean ${sample.mean}, sd ${sample.sd}, expected finite numbers. Check the readings.`,
    );
  }
  return sample;
}

function isReadings(sample: readonly number[] | SampleSummary): sample is readonly number[] {
  return Array.isArray(sample);
}

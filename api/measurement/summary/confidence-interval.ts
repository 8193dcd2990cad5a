import { tQuantile } from '../distributions/t-distribution.js';
import { mean } from './mean.js';
import { standardDeviation } from './standard-deviation.js';

export interface MeanConfidenceInterval {
  low: number;
  high: number;
  halfWidth: number;
}

/**
 * Two-sided confidence interval of the mean from Student's t.
 *
 * Formula: x̄ ± t((1 + level)/2, n − 1)·s/√n
 * @param values n ≥ 2 readings [any one unit]
 * @param level confidence level in (0, 1) [1]
 * @returns low, high and halfWidth [same unit]; of zero width when all readings are equal
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'distributions/out-of-domain' for a level outside (0, 1)
 * @see STUDENT-1908
 * @example meanConfidenceInterval([1, 2, 3]) // { low: -0.484…, high: 4.484…, halfWidth: 2.484… }
 */
export function meanConfidenceInterval(values: readonly number[], level = 0.95): MeanConfidenceInterval {
  const standardError = standardDeviation(values) / Math.sqrt(values.length);
  const halfWidth = tQuantile((1 + level) / 2, values.length - 1) * standardError;
  const average = mean(values);
  return { low: average - halfWidth, high: average + halfWidth, halfWidth };
}

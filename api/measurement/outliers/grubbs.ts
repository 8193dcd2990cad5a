import { tQuantile } from '../distributions/t-distribution.js';
import { requireProbability } from '../distributions/require-domain.js';
import { MeasurementError } from '../errors.js';
import { mean } from '../summary/mean.js';
import { requireReadings } from '../summary/require-readings.js';
import { standardDeviation } from '../summary/standard-deviation.js';

/** 'both' looks at either end; 'high' or 'low' is for an end that was chosen before the readings were seen. */
export type SuspectSide = 'both' | 'high' | 'low';

export interface GrubbsResult {
  statistic: number;
  critical: number;
  /** position of the most extreme reading; null when all readings are equal */
  suspectIndex: number | null;
  isOutlier: boolean;
}

/**
 * Critical value of Grubbs' test for one outlier.
 *
 * Formula: G = (n − 1)/√n · √[t²/(n − 2 + t²)], t = t(1 − α/2n; n − 2) for either end, t(1 − α/n; n − 2) for one stated end
 * @param n number of readings, at least 3 [1]
 * @param alpha significance level in (0, 1) [1]
 * @param side which ends are looked at
 * @returns critical value [1]
 * @throws MeasurementError 'measurement/too-few-readings' when n < 3; 'distributions/out-of-domain' for a level outside (0, 1)
 * @see NIST-EHANDBOOK 1.3.5.17.1
 * @example grubbsCritical(8, 0.05, 'both') // 2.1266…
 */
export function grubbsCritical(n: number, alpha: number, side: SuspectSide = 'both'): number {
  requireProbability(alpha, 'grubbsCritical');
  if (!(n >= 3)) {
    throw new MeasurementError('measurement/too-few-readings', `grubbsCritical: n is ${n}, expected at least 3. Test a larger set.`);
  }
  const t = tQuantile(alpha / ((side === 'both' ? 2 : 1) * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
}

/**
 * Grubbs' test: is the reading farthest from the mean too far for a normal sample?
 *
 * Formula: G = max|x − x̄|/s, or (max − x̄)/s, or (x̄ − min)/s
 * @param values n ≥ 3 readings [any one unit]
 * @param alpha significance level in (0, 1) [1]
 * @param side which ends are looked at
 * @returns statistic, critical [1], index of the suspect and the verdict; equal readings give statistic 0 and no suspect
 * @throws MeasurementError 'measurement/too-few-readings' when n < 3; 'measurement/not-a-number'; 'distributions/out-of-domain' for a level outside (0, 1)
 * @see GRUBBS-1969
 * @example grubbsTest([10, 11, 10, 12, 30]) // { statistic: 1.78…, critical: 1.71…, suspectIndex: 4, isOutlier: true }
 */
export function grubbsTest(values: readonly number[], alpha = 0.05, side: SuspectSide = 'both'): GrubbsResult {
  requireReadings(values, 3, 'grubbsTest');
  const critical = grubbsCritical(values.length, alpha, side);
  const { statistic, suspectIndex } = mostExtreme(values, side);
  return { statistic, critical, suspectIndex, isOutlier: statistic > critical };
}

/**
 * Finds the reading that lies farthest from the mean, in standard deviations.
 *
 * Formula: max over the looked-at ends of |x − x̄|/s
 * @param values n ≥ 2 readings [any one unit]
 * @param side which ends are looked at
 * @returns statistic [1] and its index; 0 and null when all readings are equal
 * @throws MeasurementError 'measurement/too-few-readings' when n < 2; 'measurement/not-a-number'
 * @see GRUBBS-1969
 * @example mostExtreme([1, 1, 4], 'both') // { statistic: 1.1547…, suspectIndex: 2 }
 */
export function mostExtreme(values: readonly number[], side: SuspectSide): { statistic: number; suspectIndex: number | null } {
  requireReadings(values, 2, 'mostExtreme');
  // The mean of equal decimals may differ from them in the last bit, so equality is asked of the readings themselves.
  if (values.every((value) => value === values[0])) return { statistic: 0, suspectIndex: null };
  const average = mean(values);
  const sd = standardDeviation(values);
  const distance = (value: number): number =>
    side === 'high' ? value - average : side === 'low' ? average - value : Math.abs(value - average);
  const suspectIndex = values.reduce((best, value, i) => (distance(value) > distance(values[best]!) ? i : best), 0);
  return { statistic: distance(values[suspectIndex]!) / sd, suspectIndex };
}

import { MeasurementError } from '../../../../api/measurement/errors.js';
import { requireReadings } from '../../../../api/measurement/summary/require-readings.js';

/** Level for an end chosen after looking (two-sided); half of it holds for an end chosen before. */
export type DixonAlpha = 0.2 | 0.1 | 0.05 | 0.02 | 0.01;

// Critical r10 for n = 3 … 10, from P(r10 > R) = n(n−1)∬φ(a)φ(b)[Φ(b − R(b − a)) − Φ(a)]ⁿ⁻² da db, solved by 200-point Gauss–Legendre quadrature.
// Agrees with the table of Dixon and Rorabacher within 0.003, except its n = 4, α = 0.01 entry (0.926): 20 million simulated samples give 0.9207 ± 0.0001.
const CRITICAL: Record<DixonAlpha, readonly number[]> = {
  0.2: [0.8856, 0.6787, 0.5581, 0.484, 0.4341, 0.398, 0.3706, 0.3489],
  0.1: [0.9413, 0.7655, 0.6424, 0.5624, 0.5073, 0.4671, 0.4363, 0.4119],
  0.05: [0.9702, 0.8298, 0.7102, 0.6275, 0.569, 0.5256, 0.4922, 0.4656],
  0.02: [0.988, 0.8894, 0.781, 0.6983, 0.6372, 0.5911, 0.5551, 0.5263],
  0.01: [0.994, 0.9207, 0.8232, 0.7427, 0.6811, 0.6336, 0.5963, 0.5661],
};

export interface DixonResult {
  statistic: number;
  critical: number;
  /** position of the reading at the end with the wider gap; null when all readings are equal */
  suspectIndex: number | null;
  isOutlier: boolean;
}

/**
 * Critical value of Dixon's r10.
 *
 * Formula: none, tabulated
 * @param n number of readings, 3 to 10 [1]
 * @param alpha two-sided level [1]
 * @returns critical value [1]
 * @throws MeasurementError 'outliers/no-critical-value' for n outside 3 … 10 or an α that has no table
 * @see DIXON-1951
 * @example dixonR10Critical(5, 0.05) // 0.7102
 */
export function dixonR10Critical(n: number, alpha: DixonAlpha): number {
  const critical = (CRITICAL[alpha] as readonly number[] | undefined)?.[n - 3];
  if (critical === undefined) {
    throw new MeasurementError(
      'outliers/no-critical-value',
      `dixonR10Critical: n is ${n} at alpha ${alpha}, expected n from 3 to 10 and alpha one of ${Object.keys(CRITICAL).join(', ')}. Use Grubbs' test.`,
    );
  }
  return critical;
}

/**
 * Dixon's ratio test for one outlier in a small set.
 *
 * Formula: r10 = gap between the end reading and its neighbour / range, at the end with the wider gap
 * @param values n readings, 3 to 10 [any one unit]
 * @param alpha two-sided level [1]
 * @returns statistic, critical [1], index of the suspect and the verdict; equal readings give statistic 0 and no suspect
 * @throws MeasurementError 'measurement/too-few-readings' when n < 3; 'outliers/no-critical-value' when n > 10; 'measurement/not-a-number'
 * @see DIXON-1951
 * @example dixonR10([1, 2, 3, 20]) // { statistic: 0.8947…, critical: 0.8298, suspectIndex: 3, isOutlier: true }
 */
export function dixonR10(values: readonly number[], alpha: DixonAlpha = 0.05): DixonResult {
  requireReadings(values, 3, 'dixonR10');
  const critical = dixonR10Critical(values.length, alpha);
  const sorted = [...values].sort((a, b) => a - b);
  const [lowest, second] = [sorted[0]!, sorted[1]!];
  const [highest, nextToHighest] = [sorted.at(-1)!, sorted.at(-2)!];
  if (lowest === highest) return { statistic: 0, critical, suspectIndex: null, isOutlier: false };
  const isHigh = highest - nextToHighest > second - lowest;
  const statistic = Math.max(highest - nextToHighest, second - lowest) / (highest - lowest);
  return { statistic, critical, suspectIndex: values.indexOf(isHigh ? highest : lowest), isOutlier: statistic > critical };
}

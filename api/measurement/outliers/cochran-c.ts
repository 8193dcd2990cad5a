import { fQuantile } from '../distributions/f-distribution.js';
import { requireProbability } from '../distributions/require-domain.js';
import { MeasurementError } from '../errors.js';
import { compensatedSum } from '../summary/compensated-sum.js';
import { requireReadings } from '../summary/require-readings.js';

export interface CochranResult {
  statistic: number;
  critical: number;
  /** position of the group with the largest variance; null when no group shows any spread */
  suspectIndex: number | null;
  isOutlier: boolean;
}

/**
 * Critical value of Cochran's test for one variance that is too large.
 *
 * Formula: C = 1/[1 + (p − 1)/F(1 − α/p; n − 1, (p − 1)(n − 1))]
 * @param groupCount p ≥ 2 groups [1]
 * @param readingsPerGroup n ≥ 2, the same in each group [1]
 * @param alpha significance level in (0, 1) [1]
 * @returns critical value [1]
 * @throws MeasurementError 'measurement/too-few-readings' when p < 2 or n < 2; 'distributions/out-of-domain' for a level outside (0, 1)
 * @see COCHRAN-1941
 * @example cochranCritical(5, 3, 0.05) // 0.6837…
 */
export function cochranCritical(groupCount: number, readingsPerGroup: number, alpha: number): number {
  requireProbability(alpha, 'cochranCritical');
  if (!(groupCount >= 2 && readingsPerGroup >= 2)) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      `cochranCritical: found ${groupCount} groups of ${readingsPerGroup}, expected at least 2 groups of 2. Collect more readings.`,
    );
  }
  const others = groupCount - 1;
  const f = fQuantile(1 - alpha / groupCount, readingsPerGroup - 1, others * (readingsPerGroup - 1));
  return 1 / (1 + others / f);
}

/**
 * Cochran's test: is the largest of several standard deviations too large for groups of equal precision?
 *
 * Formula: C = s²_max/Σs²
 * @param standardDeviations p ≥ 2 standard deviations, none negative [any one unit]
 * @param readingsPerGroup n ≥ 2, the same in each group [1]
 * @param alpha significance level in (0, 1) [1]
 * @returns statistic, critical [1], index of the suspect and the verdict; groups without any spread give statistic 0 and no suspect
 * @throws MeasurementError 'measurement/too-few-readings' when p < 2 or n < 2; 'measurement/not-a-number'; 'outliers/negative-deviation'
 * @see ISO-5725-2 7.3.3
 * @example cochranTest([1, 1, 1, 5], 3) // { statistic: 0.8928…, critical: 0.7679…, suspectIndex: 3, isOutlier: true }
 */
export function cochranTest(standardDeviations: readonly number[], readingsPerGroup: number, alpha = 0.05): CochranResult {
  requireReadings(standardDeviations, 2, 'cochranTest');
  const negative = standardDeviations.findIndex((sd) => sd < 0);
  if (negative >= 0) {
    throw new MeasurementError(
      'outliers/negative-deviation',
      `cochranTest: standard deviation ${negative + 1} is ${String(standardDeviations[negative])}, expected 0 or more. Give standard deviations, not differences.`,
    );
  }
  const critical = cochranCritical(standardDeviations.length, readingsPerGroup, alpha);
  const largest = standardDeviations.reduce((a, b) => Math.max(a, b));
  if (largest === 0) return { statistic: 0, critical, suspectIndex: null, isOutlier: false };
  // Scaled by the largest first, so that squaring neither overflows nor vanishes.
  const statistic = 1 / compensatedSum(standardDeviations.map((sd) => (sd / largest) ** 2));
  return { statistic, critical, suspectIndex: standardDeviations.indexOf(largest), isOutlier: statistic > critical };
}

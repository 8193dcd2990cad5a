import { MeasurementError } from '../../../../api/measurement/errors.js';
import { requireReadings } from '../../../../api/measurement/summary/require-readings.js';
import { grubbsCritical, mostExtreme } from '../../../../api/measurement/outliers/grubbs.js';

export interface EsdStep {
  statistic: number;
  critical: number;
  /** position in the original readings; null when the readings left are all equal */
  suspectIndex: number | null;
}

export interface EsdResult {
  steps: EsdStep[];
  outlierCount: number;
  /** positions in the original readings, in the order of removal */
  outlierIndices: number[];
}

/**
 * Generalised extreme Studentised deviate test for up to a stated number of outliers.
 * Every step is done: the last significant one decides, because near outliers can hide each other in the earlier ones.
 *
 * Formula: Rᵢ = max|x − x̄|/s after i − 1 removals; λᵢ = Grubbs' two-sided critical value of the readings left; count = largest i with Rᵢ > λᵢ
 * @param values n ≥ 3 readings [any one unit]; the λ are accurate from n = 25, fair from n = 15
 * @param maxOutliers most outliers looked for, 1 to n − 2 [1]
 * @param alpha significance level in (0, 1) [1]
 * @returns every step, the number of outliers and their positions
 * @throws MeasurementError 'measurement/too-few-readings' when n < 3; 'outliers/bad-maximum' for a maximum outside 1 … n − 2; 'measurement/not-a-number'
 * @see ROSNER-1983
 * @example generalisedEsd([1, 2, 3, 2, 1, 2, 50], 2).outlierIndices // [6]
 */
export function generalisedEsd(values: readonly number[], maxOutliers: number, alpha = 0.05): EsdResult {
  requireReadings(values, 3, 'generalisedEsd');
  if (!Number.isInteger(maxOutliers) || maxOutliers < 1 || maxOutliers > values.length - 2) {
    throw new MeasurementError(
      'outliers/bad-maximum',
      `generalisedEsd: found a maximum of ${maxOutliers}, expected a whole number from 1 to ${values.length - 2} for ${values.length} readings.`,
    );
  }
  const left = values.map((value, index) => ({ value, index }));
  const steps: EsdStep[] = [];
  for (let i = 0; i < maxOutliers; i += 1) {
    const critical = grubbsCritical(left.length, alpha, 'both');
    const extreme = mostExtreme(
      left.map((reading) => reading.value),
      'both',
    );
    const [removed] = left.splice(extreme.suspectIndex ?? 0, 1);
    steps.push({ statistic: extreme.statistic, critical, suspectIndex: extreme.suspectIndex === null ? null : removed!.index });
  }
  const outlierCount = steps.findLastIndex((step) => step.statistic > step.critical) + 1;
  const outlierIndices = steps.slice(0, outlierCount).flatMap((step) => (step.suspectIndex === null ? [] : [step.suspectIndex]));
  return { steps, outlierCount, outlierIndices };
}

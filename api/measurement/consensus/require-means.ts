import { MeasurementError } from '../errors.js';
import type { MeanWithUncertainty } from './consensus.js';

/**
 * Refuses means of which no consensus can be formed.
 *
 * Formula: k ≥ 2, every mean finite, every u finite and above 0
 * @param means means [one unit] with standard uncertainties [same unit]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'measurement/too-few-readings' for k < 2; 'measurement/not-a-number'; 'consensus/no-uncertainty' for u ≤ 0
 * @see COMMON-PRACTICE
 * @example requireMeans([{ mean: 10, standardUncertainty: 1 }, { mean: 11, standardUncertainty: 1 }], 'mandelPaule')
 */
export function requireMeans(means: readonly MeanWithUncertainty[], where: string): void {
  if (means.length < 2)
    throw new MeasurementError(
      'measurement/too-few-readings',
      `${where}: found ${means.length} means, expected at least 2. Use the one mean itself.`,
    );
  means.forEach(({ mean, standardUncertainty }, i) => {
    if (!Number.isFinite(mean) || !Number.isFinite(standardUncertainty))
      throw new MeasurementError(
        'measurement/not-a-number',
        `${where}: mean ${i + 1} is ${mean} with standard uncertainty ${standardUncertainty}, expected finite numbers. Correct that submission.`,
      );
    if (!(standardUncertainty > 0))
      throw new MeasurementError(
        'consensus/no-uncertainty',
        `${where}: standard uncertainty ${i + 1} is ${standardUncertainty}, expected above 0. Test more specimens.`,
      );
  });
}

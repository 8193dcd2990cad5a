import { tQuantile } from '../../distributions/t-distribution.js';
import { requireProbability } from '../../distributions/require-domain.js';
import { requirePositive } from '../../figures/require-positive.js';
import { MeasurementError } from '../../errors.js';

const MOST_SPECIMENS = 1_000_000;

/**
 * Specimens of each entry that tell two entries apart: the planning aid of a category.
 *
 * Formula: smallest n ≥ 2 with n ≥ 2·((t(1 − α/2; 2n − 2) + t(power; 2n − 2))·CV/Δ)²; one comparison, rigs and testers the same
 * @param cvPercent spread of a specimen in the category, above 0 [%]
 * @param differencePercent Δ, difference to be told, above 0 [%]
 * @param power chance to tell it, in (0, 1) [1]
 * @param alpha two-sided level, in (0, 1) [1]
 * @returns n of each of the two [1]
 * @throws MeasurementError 'figures/not-positive'; 'distributions/out-of-domain'; 'uncertainty/too-many-specimens' above a million
 * @see NIST-EHANDBOOK 7.2.2.2
 * @example specimensToTell(5) // 45
 */
export function specimensToTell(cvPercent: number, differencePercent = 3, power = 0.8, alpha = 0.05): number {
  requirePositive(cvPercent, 'cvPercent', 'specimensToTell');
  requirePositive(differencePercent, 'differencePercent', 'specimensToTell');
  requireProbability(power, 'specimensToTell');
  requireProbability(alpha, 'specimensToTell');
  const needed = (n: number): number => {
    const degreesOfFreedom = n === Infinity ? Infinity : 2 * n - 2;
    return 2 * (((tQuantile(1 - alpha / 2, degreesOfFreedom) + tQuantile(power, degreesOfFreedom)) * cvPercent) / differencePercent) ** 2;
  };
  // The normal answer is always too small, so the search can start there.
  for (let n = Math.max(2, Math.floor(needed(Infinity))); n <= MOST_SPECIMENS; n++) if (n >= needed(n)) return n;
  throw new MeasurementError(
    'uncertainty/too-many-specimens',
    `specimensToTell: more than ${MOST_SPECIMENS} specimens would be needed for CV ${cvPercent} % and ${differencePercent} %. Ask for a larger difference.`,
  );
}

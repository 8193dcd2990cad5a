import { normalQuantile } from '../../../../api/measurement/distributions/normal-distribution.js';
import { tQuantile } from '../../../../api/measurement/distributions/t-distribution.js';
import { requirePositive } from '../../../../api/measurement/figures/require-positive.js';
import { MeasurementError } from '../../../../api/measurement/errors.js';

const MOST_SPECIMENS = 100_000;

/**
 * Specimens needed for a mean with a stated allowed error when the spread is known beforehand.
 *
 * Formula: n = ⌈(z·CV/E)²⌉, z = Φ⁻¹((1 + confidence)/2)
 * @param cvPercent known coefficient of variation, above 0 [%]
 * @param allowedErrorPercent E, half-width of the interval, above 0 [%]
 * @param confidence level in (0, 1) [1]
 * @returns n, at least 1 [1]
 * @throws MeasurementError 'figures/not-positive'; 'distributions/out-of-domain' for a bad level
 * @see ASTM-D2256 number of specimens (from memory)
 * @example specimensForKnownSpread(5, 4) // 7
 */
export function specimensForKnownSpread(cvPercent: number, allowedErrorPercent: number, confidence = 0.95): number {
  requirePositive(cvPercent, 'cvPercent', 'specimensForKnownSpread');
  requirePositive(allowedErrorPercent, 'allowedErrorPercent', 'specimensForKnownSpread');
  return Math.max(1, Math.ceil((normalQuantile((1 + confidence) / 2) * (cvPercent / allowedErrorPercent)) ** 2));
}

/**
 * Specimens needed for a mean with a stated allowed error when the spread will come from the same specimens.
 *
 * Formula: smallest n ≥ 2 with n ≥ (t((1 + confidence)/2; n − 1)·CV/E)²
 * @param cvPercent expected coefficient of variation, above 0 [%]
 * @param allowedErrorPercent E, half-width of the interval, above 0 [%]
 * @param confidence level in (0, 1) [1]
 * @returns n [1]
 * @throws MeasurementError 'figures/not-positive'; 'uncertainty/too-many-specimens' above 100 000; 'distributions/out-of-domain' for a bad level
 * @see ASTM-D2256 number of specimens (from memory)
 * @example specimensForOwnSpread(5, 4) // 9
 */
export function specimensForOwnSpread(cvPercent: number, allowedErrorPercent: number, confidence = 0.95): number {
  // The known-spread answer is always too small, so the search can start there.
  let n = Math.max(2, specimensForKnownSpread(cvPercent, allowedErrorPercent, confidence));
  const ratio = cvPercent / allowedErrorPercent;
  while (n <= MOST_SPECIMENS) {
    if (n >= (tQuantile((1 + confidence) / 2, n - 1) * ratio) ** 2) return n;
    n += 1;
  }
  throw new MeasurementError(
    'uncertainty/too-many-specimens',
    `specimensForOwnSpread: more than ${MOST_SPECIMENS} specimens would be needed for CV ${cvPercent} % and error ${allowedErrorPercent} %. Allow a larger error.`,
  );
}

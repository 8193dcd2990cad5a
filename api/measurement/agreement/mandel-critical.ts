import { fQuantile } from '../distributions/f-distribution.js';
import { requireProbability } from '../distributions/require-domain.js';
import { tQuantile } from '../distributions/t-distribution.js';
import { MeasurementError } from '../errors.js';

/**
 * Critical value of Mandel's h, for either side.
 *
 * Formula: h = (p − 1)t/√(p(t² + p − 2)), t = t(1 − α/2; p − 2)
 * @param testers p ≥ 3 [1]
 * @param alpha two-sided level in (0, 1): 0.005 in E691, 0.01 and 0.05 in ISO 5725-2 [1]
 * @returns critical value of |h| [1]
 * @throws MeasurementError 'agreement/too-few-testers' for p < 3; 'distributions/out-of-domain' for a bad level
 * @see ASTM-E691
 * @example mandelHCritical(8, 0.005) // 2.1524…
 */
export function mandelHCritical(testers: number, alpha: number): number {
  requireProbability(alpha, 'mandelHCritical');
  if (!(Number.isInteger(testers) && testers >= 3)) refuse('mandelHCritical', testers, 3);
  const t = tQuantile(1 - alpha / 2, testers - 2);
  return ((testers - 1) * t) / Math.sqrt(testers * (t * t + testers - 2));
}

/**
 * Critical value of Mandel's k.
 *
 * Formula: k = √(p/(1 + (p − 1)/F)), F = F(1 − α; n − 1, (p − 1)(n − 1))
 * @param testers p ≥ 2 [1]
 * @param readingsPerTester n ≥ 2 [1]
 * @param alpha one-sided level in (0, 1): 0.005 in E691, 0.01 and 0.05 in ISO 5725-2 [1]
 * @returns critical value of k [1]
 * @throws MeasurementError 'agreement/too-few-testers' for p < 2; 'measurement/too-few-readings' for n < 2; 'distributions/out-of-domain' for a bad level
 * @see ASTM-E691
 * @example mandelKCritical(8, 3, 0.005) // 2.0608…
 */
export function mandelKCritical(testers: number, readingsPerTester: number, alpha: number): number {
  requireProbability(alpha, 'mandelKCritical');
  if (!(Number.isInteger(testers) && testers >= 2)) refuse('mandelKCritical', testers, 2);
  if (!(readingsPerTester >= 2)) {
    throw new MeasurementError(
      'measurement/too-few-readings',
      `mandelKCritical: found ${readingsPerTester} readings per tester, expected at least 2. Repeat the pulls.`,
    );
  }
  const f = fQuantile(1 - alpha, readingsPerTester - 1, (testers - 1) * (readingsPerTester - 1));
  return Math.sqrt(testers / (1 + (testers - 1) / f));
}

function refuse(where: string, found: number, expected: number): never {
  throw new MeasurementError(
    'agreement/too-few-testers',
    `${where}: found ${found} testers, expected a whole number of at least ${expected}. Invite another tester.`,
  );
}

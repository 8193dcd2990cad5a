import { MeasurementError } from '../../../../api/measurement/errors.js';

// Lanczos coefficients for g = 7, nine terms.
const COEFFICIENTS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/**
 * Natural logarithm of the gamma function for positive arguments.
 *
 * Formula: Lanczos approximation with g = 7, relative error about 1e-15
 * @param x argument above 0, finite [1]
 * @returns ln Γ(x) [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < x < ∞
 * @see NIST-EHANDBOOK 1.3.6
 * @example logGamma(5) // 3.1780…
 */
export function logGamma(x: number): number {
  if (!(x > 0 && x < Infinity)) {
    throw new MeasurementError(
      'distributions/out-of-domain',
      `logGamma: x is ${x}, expected a finite number above 0. Check the step before this one.`,
    );
  }
  const shifted = x - 1;
  const series = COEFFICIENTS.slice(1).reduce((sum, coefficient, i) => sum + coefficient / (shifted + i + 1), COEFFICIENTS[0]!);
  const base = shifted + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(base) - base + Math.log(series);
}

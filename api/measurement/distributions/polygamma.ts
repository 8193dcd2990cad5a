import { MeasurementError } from '../errors.js';

/** Below it the recurrence is used, above it the asymptotic series is exact to double precision. */
const SERIES_FROM = 10;

/**
 * Logarithmic derivative of the gamma function.
 *
 * Formula: ψ(x) = ψ(x + 1) − 1/x up to x ≥ 10, then ln x − 1/2x − 1/12x² + 1/120x⁴ − …
 * @param x argument above 0, finite [1]
 * @returns ψ(x) [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < x < ∞
 * @see NIST-EHANDBOOK 1.3.6
 * @example digamma(1) // -0.5772…
 */
export function digamma(x: number): number {
  requirePositiveArgument(x, 'digamma');
  if (x < SERIES_FROM) return digamma(x + 1) - 1 / x;
  const y = 1 / (x * x);
  return Math.log(x) - 0.5 / x - y * (1 / 12 - y * (1 / 120 - y * (1 / 252 - y * (1 / 240 - y * (1 / 132 - (y * 691) / 32760)))));
}

/**
 * Second logarithmic derivative of the gamma function.
 *
 * Formula: ψ′(x) = ψ′(x + 1) + 1/x² up to x ≥ 10, then 1/x + 1/2x² + 1/6x³ − 1/30x⁵ + …
 * @param x argument above 0, finite [1]
 * @returns ψ′(x) [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < x < ∞
 * @see NIST-EHANDBOOK 1.3.6
 * @example trigamma(1) // 1.6449…
 */
export function trigamma(x: number): number {
  requirePositiveArgument(x, 'trigamma');
  if (x < SERIES_FROM) return trigamma(x + 1) + 1 / (x * x);
  const y = 1 / (x * x);
  return 1 / x + y / 2 + (y / x) * (1 / 6 - y * (1 / 30 - y * (1 / 42 - y * (1 / 30 - y * (5 / 66 - (y * 691) / 2730)))));
}

/**
 * Argument at which the second logarithmic derivative of the gamma function has a given value.
 *
 * Formula: x with ψ′(x) = y, by Newton's method on 1/ψ′ from x = 1/2 + 1/y, which approaches from below
 * @param y value above 0, finite [1]
 * @returns x [1]
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < y < ∞
 * @see SMYTH-2004 appendix
 * @example inverseTrigamma(1.6449340668482264) // 1
 */
export function inverseTrigamma(y: number): number {
  requirePositiveArgument(y, 'inverseTrigamma');
  if (y > 1e7) return 1 / Math.sqrt(y);
  if (y < 1e-6) return 1 / y;
  let x = 0.5 + 1 / y;
  for (let i = 0; i < 50; i++) {
    const value = trigamma(x);
    // The slope of ψ′ by central difference is close enough: Newton corrects itself.
    const slope = (trigamma(x * 1.0001) - trigamma(x * 0.9999)) / (0.0002 * x);
    const step = (value * (1 - value / y)) / slope;
    x += step;
    if (Math.abs(step) <= 1e-14 * x) break;
  }
  return x;
}

function requirePositiveArgument(x: number, where: string): void {
  if (!(x > 0 && x < Infinity)) {
    throw new MeasurementError(
      'distributions/out-of-domain',
      `${where}: the argument is ${x}, expected a finite number above 0. Check the step before this one.`,
    );
  }
}

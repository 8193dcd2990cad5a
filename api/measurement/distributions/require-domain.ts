import { MeasurementError } from '../errors.js';

/**
 * Refuses a probability outside the open interval (0, 1), where a quantile is not a finite number.
 *
 * Formula: 0 < p < 1
 * @param p probability [1]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < p < 1
 * @see NIST-EHANDBOOK 1.3.6
 * @example requireProbability(0.95, 'tQuantile')
 */
export function requireProbability(p: number, where: string): void {
  if (!(p > 0 && p < 1)) {
    throw new MeasurementError(
      'distributions/out-of-domain',
      `${where}: p is ${p}, expected 0 < p < 1. Give a probability, not a percentage.`,
    );
  }
}

/**
 * Refuses degrees of freedom that are not above zero; infinity stands for a known variance and is allowed.
 *
 * Formula: ν > 0
 * @param degreesOfFreedom ν [1]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'distributions/out-of-domain' unless ν > 0
 * @see NIST-EHANDBOOK 1.3.6
 * @example requireDegreesOfFreedom(9, 'tQuantile')
 */
export function requireDegreesOfFreedom(degreesOfFreedom: number, where: string): void {
  if (!(degreesOfFreedom > 0)) {
    throw new MeasurementError(
      'distributions/out-of-domain',
      `${where}: degrees of freedom are ${degreesOfFreedom}, expected a number above 0 or Infinity. Check the number of readings.`,
    );
  }
}

/**
 * Refuses degrees of freedom that are not a finite number above zero.
 *
 * Formula: 0 < ν < ∞
 * @param degreesOfFreedom ν [1]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'distributions/out-of-domain' unless 0 < ν < ∞
 * @see NIST-EHANDBOOK 1.3.6
 * @example requireFiniteDegreesOfFreedom(9, 'chiSquareCdf')
 */
export function requireFiniteDegreesOfFreedom(degreesOfFreedom: number, where: string): void {
  requireDegreesOfFreedom(degreesOfFreedom, where);
  if (degreesOfFreedom === Infinity) {
    throw new MeasurementError(
      'distributions/out-of-domain',
      `${where}: degrees of freedom are infinite, expected a finite number. Give the number of readings less one.`,
    );
  }
}

/**
 * Refuses an argument that is not a number; infinities are allowed, their probability is 0 or 1.
 *
 * Formula: x is not NaN
 * @param x argument of a distribution function [1]
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'distributions/out-of-domain' when x is NaN
 * @see NIST-EHANDBOOK 1.3.6
 * @example requireArgument(1.96, 'normalCdf')
 */
export function requireArgument(x: number, where: string): void {
  if (Number.isNaN(x)) {
    throw new MeasurementError('distributions/out-of-domain', `${where}: x is NaN, expected a number. Check the step before this one.`);
  }
}

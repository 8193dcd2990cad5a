import { MeasurementError } from '../errors.js';

/**
 * Refuses a quantity that is not a finite number above zero, so that no division can give an infinity or NaN.
 *
 * Formula: 0 < value < ∞
 * @param value quantity [its own unit]
 * @param name what it is, with its unit, for the message
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'figures/not-positive' unless 0 < value < ∞
 * @see COMMON-PRACTICE
 * @example requirePositive(0.256, 'diameterMm', 'circleAreaMm2')
 */
export function requirePositive(value: number, name: string, where: string): void {
  if (!(value > 0 && value < Infinity)) {
    throw new MeasurementError(
      'figures/not-positive',
      `${where}: ${name} is ${value}, expected a finite number above 0. Correct the reading.`,
    );
  }
}

/**
 * Refuses a quantity that is negative or not finite.
 *
 * Formula: 0 ≤ value < ∞
 * @param value quantity [its own unit]
 * @param name what it is, with its unit, for the message
 * @param where name of the calling function, for the message
 * @returns nothing
 * @throws MeasurementError 'figures/negative' unless 0 ≤ value < ∞
 * @see COMMON-PRACTICE
 * @example requireNotNegative(0, 'expandedUncertainty', 'decideClaim')
 */
export function requireNotNegative(value: number, name: string, where: string): void {
  if (!(value >= 0 && value < Infinity)) {
    throw new MeasurementError(
      'figures/negative',
      `${where}: ${name} is ${value}, expected a finite number of 0 or more. Correct the reading.`,
    );
  }
}

/**
 * Refuses what is not a finite number, by name.
 *
 * Formula: −∞ < value < ∞
 * @param value number to check [any one unit]
 * @param name what it is
 * @param where function that was called
 * @returns nothing
 * @throws MeasurementError 'measurement/not-a-number'
 * @see COMMON-PRACTICE
 * @example requireFinite(0.5, 'target', 'cusumChart')
 */
export function requireFinite(value: number, name: string, where: string): void {
  if (Number.isFinite(value)) return;
  throw new MeasurementError(
    'measurement/not-a-number',
    `${where}: ${name} is ${value}, expected a finite number. Check the step before this one.`,
  );
}

import { MeasurementError } from '../errors.js';
import { computedDecimal } from './to-decimal.js';

const MOST_PLACES = 40;

/**
 * Rounds to a stated number of decimal places; an exact half goes to the even neighbour.
 *
 * Formula: ISO 80000-1 annex B, rule A; of a computed number its first 14 digits, so that the mean of 23.77 and 23.78 is the tie that it is
 * @param value decimal string, taken exactly, or a computed number [any]
 * @param places decimals in the result, 0 to 40 [1]
 * @returns decimal string with exactly that many places, never with a minus sign on zero [same unit]
 * @throws MeasurementError 'units/not-a-number' for a value that is not finite; 'units/bad-places' for places that are not a whole number from 0 to 40
 * @see ISO-80000 annex B, rule A
 * @example roundHalfEven('2.345', 2) // '2.34'
 */
export function roundHalfEven(value: string | number, places: number): string {
  if (!Number.isInteger(places) || places < 0 || places > MOST_PLACES) {
    throw new MeasurementError(
      'units/bad-places',
      `roundHalfEven: found ${places} places, expected a whole number from 0 to ${MOST_PLACES}.`,
    );
  }
  const rounded = computedDecimal(value, 'roundHalfEven').toDecimalPlaces(places);
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(places);
}

import { MeasurementError } from '../errors.js';
import { ExactDecimal } from './exact-decimal.js';
import { computedDecimal } from './to-decimal.js';

/** A value with its interval, as shown. */
export interface RoundedInterval {
  value: string;
  low: string | null;
  high: string | null;
}

/**
 * Rounds a value and the ends of its interval for show, all to one place: that of the second digit of half the interval's width, and never finer than the places that are stated.
 *
 * Formula: U = (high − low)/2; last place = 10^(⌊log₁₀ U⌋ − 1), taken after U itself is rounded, but at least 10^−mostPlaces; half-even
 * @param value measured value [any one unit]
 * @param interval its ends; null where they are not known, which leaves the stated places [same unit]
 * @param mostPlaces decimals that the method or the scheme states, 0 or more [1]
 * @returns value, low and high as decimal strings [same unit]; low and high null without an interval
 * @throws MeasurementError 'units/not-a-number' for a number that is not finite; 'units/bad-places' for places that are not a whole number of 0 or more
 * @see JCGM-100 7.2.6
 * @example roundInterval(419959, { low: 409062, high: 430856 }, 0) // { value: '420000', low: '409000', high: '431000' }
 */
export function roundInterval(
  value: string | number,
  interval: { readonly low: string | number; readonly high: string | number } | null,
  mostPlaces: number,
): RoundedInterval {
  if (!Number.isInteger(mostPlaces) || mostPlaces < 0)
    throw new MeasurementError('units/bad-places', `roundInterval: found ${mostPlaces} places, expected a whole number of 0 or more.`);
  if (interval === null) return { value: atPlace(value, mostPlaces), low: null, high: null };
  const halfWidth = computedDecimal(interval.high, 'roundInterval').minus(computedDecimal(interval.low, 'roundInterval')).div(2);
  const lastPlace = halfWidth.greaterThan(0) ? Math.min(mostPlaces, 1 - halfWidth.toSignificantDigits(2).e) : mostPlaces;
  return { value: atPlace(value, lastPlace), low: atPlace(interval.low, lastPlace), high: atPlace(interval.high, lastPlace) };
}

/** Half-even to 10^−lastPlace, which may be a whole ten, hundred, …; never with a minus sign on zero. */
function atPlace(value: string | number, lastPlace: number): string {
  const rounded = computedDecimal(value, 'roundInterval').toNearest(ExactDecimal.pow(10, -lastPlace));
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(Math.max(0, lastPlace));
}

import { MeasurementError } from '../errors.js';
import { ExactDecimal } from './exact-decimal.js';
import { toDecimal } from './to-decimal.js';

export interface RoundedResult {
  value: string;
  expandedUncertainty: string;
  /** decimal places of both; 0 where the last place shown is the unit or above */
  places: number;
}

/**
 * Rounds a value and its expanded uncertainty for show: two significant digits of U, and the value to the same place.
 *
 * Formula: last place = 10^(⌊log₁₀ U⌋ − 1), taken after U itself is rounded; half-even
 * @param value measured value [any one unit]
 * @param expandedUncertainty U > 0 [same unit]
 * @returns value and expandedUncertainty as decimal strings [same unit], places [1]; where U ≥ 100 both are whole tens, hundreds, …
 * @throws MeasurementError 'units/bad-uncertainty' unless U > 0 and finite; 'units/not-a-number' for a value that is not finite
 * @see JCGM-100 7.2.6
 * @example roundToUncertainty(89.2371, 0.4449) // { value: '89.24', expandedUncertainty: '0.44', places: 2 }
 */
export function roundToUncertainty(value: string | number, expandedUncertainty: string | number): RoundedResult {
  const uncertainty = toDecimal(expandedUncertainty, 'roundToUncertainty');
  if (!uncertainty.greaterThan(0)) {
    throw new MeasurementError(
      'units/bad-uncertainty',
      `roundToUncertainty: U is ${String(expandedUncertainty)}, expected more than 0. State an uncertainty or give the places yourself.`,
    );
  }
  // Rounding first: 0.0996 becomes 0.10, whose second digit sits one place higher.
  const twoDigits = uncertainty.toSignificantDigits(2);
  const lastPlace = 1 - twoDigits.e;
  const places = Math.max(0, lastPlace);
  const rounded = toDecimal(value, 'roundToUncertainty').toNearest(ExactDecimal.pow(10, -lastPlace));
  return {
    value: (rounded.isZero() ? rounded.abs() : rounded).toFixed(places),
    expandedUncertainty: twoDigits.toFixed(places),
    places,
  };
}

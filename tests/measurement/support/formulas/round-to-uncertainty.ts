import { MeasurementError } from '../../../../api/measurement/errors.js';
import { ExactDecimal } from '../../../../api/measurement/units/exact-decimal.js';
import { computedDecimal, toDecimal } from '../../../../api/measurement/units/to-decimal.js';

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
  const twoDigits = twoDigitsOf(expandedUncertainty, 'roundToUncertainty');
  const lastPlace = 1 - twoDigits.e;
  const places = Math.max(0, lastPlace);
  return { value: atPlace(value, lastPlace), expandedUncertainty: twoDigits.toFixed(places), places };
}

function twoDigitsOf(expandedUncertainty: string | number, where: string): InstanceType<typeof ExactDecimal> {
  const uncertainty = toDecimal(expandedUncertainty, where);
  if (!uncertainty.greaterThan(0)) {
    throw new MeasurementError(
      'units/bad-uncertainty',
      `${where}: U is ${String(expandedUncertainty)}, expected more than 0. State an uncertainty or give the places yourself.`,
    );
  }
  // Rounding first: 0.0996 becomes 0.10, whose second digit sits one place higher.
  return uncertainty.toSignificantDigits(2);
}

/** Half-even to 10^−lastPlace, which may be a whole ten, hundred, …; never with a minus sign on zero. */
function atPlace(value: string | number, lastPlace: number): string {
  const rounded = computedDecimal(value, 'roundToUncertainty').toNearest(ExactDecimal.pow(10, -lastPlace));
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(Math.max(0, lastPlace));
}

import { MAX_ENTERED_DIGITS } from './exact-decimal.js';
import { findUnit } from './find-unit.js';
import { toDecimal } from './to-decimal.js';
import { UNITS } from './unit-table.js';
import type { UnitSymbol } from './unit-table.js';

/**
 * Expresses an SI value in another unit of the same dimension; what parseQuantity read comes back digit for digit.
 *
 * Formula: value = SI·divisor/factor − offset, to 30 significant digits
 * @param valueSi value in the SI unit of the target's dimension [N, m, kg, kg/m, Pa, 1, s or °C]
 * @param to symbol of the target unit
 * @returns decimal string [to]
 * @throws MeasurementError 'units/unknown-symbol'; 'units/not-a-number' when the value is not a finite number
 * @see NIST-SP-811 appendix B
 * @example convert('88.96443230521', 'lbf') // '20'
 */
export function convert(valueSi: string | number, to: UnitSymbol): string {
  const { factor, divisor, offset } = UNITS[findUnit(to)];
  const value = toDecimal(valueSi, 'convert').times(divisor).div(factor).minus(offset).toSignificantDigits(MAX_ENTERED_DIGITS);
  return value.isZero() ? '0' : value.toString();
}

import { MeasurementError } from '../errors.js';
import { ExactDecimal, KEPT_DIGITS, MAX_ENTERED_DIGITS } from './exact-decimal.js';
import { findUnit } from './find-unit.js';
import { SI_UNITS, UNITS } from './unit-table.js';
import type { Dimension, SiUnit, UnitSymbol } from './unit-table.js';

export interface ParsedQuantity {
  /** the number as entered, without surrounding space */
  text: string;
  unit: UnitSymbol;
  /** exact decimal in SI; 40 significant digits where no finite decimal exists (den, psi, ksi, °F) */
  si: string;
  siUnit: SiUnit;
  dimension: Dimension;
}

const PLAIN_NUMBER = /^[+-]?\d+(\.\d+)?([eE][+-]?\d{1,2})?$/;

/**
 * Reads a number and a unit as a tester enters them and adds the exact SI value; the entered form is kept.
 *
 * Formula: SI = (entered + offset)·factor/divisor
 * @param text decimal number with a point, exponent allowed [unitSymbol]
 * @param unitSymbol one of the table's symbols
 * @returns entered text and unit, SI value as a decimal string [siUnit], dimension
 * @throws MeasurementError 'units/unknown-symbol'; 'units/not-a-number' for anything but a plain decimal number; 'units/too-many-digits' above 30 digits
 * @see NIST-SP-811 appendix B
 * @example parseQuantity('20', 'lbf') // { text: '20', unit: 'lbf', si: '88.96443230521', siUnit: 'N', dimension: 'force' }
 */
export function parseQuantity(text: string, unitSymbol: string): ParsedQuantity {
  const unit = findUnit(unitSymbol);
  const trimmed = text.trim();
  if (!PLAIN_NUMBER.test(trimmed)) {
    throw new MeasurementError(
      'units/not-a-number',
      `parseQuantity: found "${trimmed.slice(0, 40)}", expected a number such as 20 or 19.85. Use a point and no thousands separator.`,
    );
  }
  const digits = trimmed.replace(/[eE].*$/, '').replace(/[^\d]/g, '').length;
  if (digits > MAX_ENTERED_DIGITS) {
    throw new MeasurementError(
      'units/too-many-digits',
      `parseQuantity: found ${digits} digits, expected at most ${MAX_ENTERED_DIGITS}. Enter the digits that the instrument shows.`,
    );
  }
  const { dimension, factor, divisor, offset } = UNITS[unit];
  const entered = new ExactDecimal(trimmed);
  // Only °F is offset, and each number of a text is read anew: half the time of a reading.
  const scaled = (offset === '0' ? entered : entered.plus(offset)).times(factor);
  const si = divisor === '1' ? scaled : scaled.div(divisor).toSignificantDigits(KEPT_DIGITS);
  return { text: trimmed, unit, si: si.isZero() ? '0' : si.toString(), siUnit: SI_UNITS[dimension], dimension };
}

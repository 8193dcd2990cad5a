import { MeasurementError } from '../errors.js';
import { ExactDecimal } from './exact-decimal.js';

/**
 * Turns a number or a decimal string into an exact decimal.
 *
 * Formula: none; a number is taken by its shortest decimal form
 * @param value number or decimal string [any]
 * @param where name of the calling function, for the message
 * @returns exact decimal [same unit]
 * @throws MeasurementError 'units/not-a-number' for text that is no number, NaN and infinities
 * @see ISO-80000
 * @example toDecimal('0.1', 'convert').toFixed() // '0.1'
 */
export function toDecimal(value: string | number, where: string): InstanceType<typeof ExactDecimal> {
  const isPlain = typeof value === 'number' ? Number.isFinite(value) : /^[+-]?\d+(\.\d+)?([eE][+-]?\d+)?$/.test(value.trim());
  if (!isPlain) {
    throw new MeasurementError(
      'units/not-a-number',
      `${where}: found "${String(value).slice(0, 40)}", expected a finite number. Check the step before this one.`,
    );
  }
  return new ExactDecimal(typeof value === 'number' ? value : value.trim());
}

/** Digits of a computed number that its sums and conversions leave untouched: a double has 15 to 17. */
const COMPUTED_DIGITS = 14;

/**
 * Turns a decimal string into the exact decimal, and a computed number into what is sure of it, so that a tie is seen as one.
 *
 * Formula: the first 14 significant digits of a number; a string as it is
 * @param value decimal string or computed number [any]
 * @param where name of the calling function, for the message
 * @returns decimal [same unit]
 * @throws MeasurementError 'units/not-a-number' for text that is no number, NaN and infinities
 * @see ISO-80000 annex B
 * @example computedDecimal(0.1 + 0.2, 'roundHalfEven').toFixed() // '0.3'
 */
export function computedDecimal(value: string | number, where: string): InstanceType<typeof ExactDecimal> {
  const exact = toDecimal(value, where);
  return typeof value === 'number' ? exact.toSignificantDigits(COMPUTED_DIGITS) : exact;
}

import { Decimal } from 'decimal.js';

const SIGNIFICANT_DIGITS = 12;

/** A computed number as a plain decimal of twelve significant digits, so that the last bits of floats never reach a digest. */
export const twelveDigits = (value: number): string => new Decimal(value).toSignificantDigits(SIGNIFICANT_DIGITS).toFixed();

import { Decimal } from 'decimal.js';

/** Digits that an entered number may have; every exact factor has at most 14, so products stay below the working precision. */
export const MAX_ENTERED_DIGITS = 30;

/** Digits that are kept where a factor has no finite decimal form (denier, psi, °F). */
export const KEPT_DIGITS = 40;

/** Decimal arithmetic for unit work: 60 digits, half-even, free of any setting made elsewhere. */
export const ExactDecimal = Decimal.clone({
  precision: 60,
  rounding: Decimal.ROUND_HALF_EVEN,
  toExpNeg: -60,
  toExpPos: 80,
  minE: -9e15,
  maxE: 9e15,
  defaults: true,
});

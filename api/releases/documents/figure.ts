import type { Quantity } from '../../editions/editions.schemas.js';
import { intervalOf } from '../../editions/estimate.js';
import type { Result } from '../../editions/results.js';
import { convert } from '../../measurement/units/convert.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import { UNITS } from '../../measurement/units/unit-table.js';
import type { UnitSymbol } from '../../measurement/units/unit-table.js';
import type { Figure } from '../../public-api/release-documents.schemas.js';

/** How a quantity is shown. */
export interface Shown {
  readonly unit: string;
  readonly places: number;
  readonly tradeUnit: string | null;
  readonly tradePlaces: number | null;
}

/** How quantities are shown that no category of the scheme ranks. */
export const USUAL: Readonly<Record<Quantity, Shown>> = {
  breakingForce: { unit: 'N', places: 1, tradeUnit: 'lbf', tradePlaces: 2 },
  apparentStress: { unit: 'MPa', places: 1, tradeUnit: 'psi', tradePlaces: 0 },
  diameter: { unit: 'mm', places: 3, tradeUnit: 'in', tradePlaces: 4 },
  outOfRoundness: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
  linearDensity: { unit: 'tex', places: 2, tradeUnit: 'den', tradePlaces: 0 },
  knotRetention: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
  abrasionRetention: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
  strengthHonesty: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
};

/** A published value in another unit, rounded to its places. */
export function inUnit(value: number, from: string, to: string, places: number): string {
  const { factor, divisor } = UNITS[from as UnitSymbol];
  return roundHalfEven(convert((value * Number(factor)) / Number(divisor), to as UnitSymbol), places);
}

/** A result as a published figure: value, 95 % interval, evidence, and the same in the trade's unit. */
export function toFigure(result: Result, shown: Shown): Figure {
  const interval = intervalOf(result.estimate);
  const { unit, places, tradeUnit, tradePlaces } = shown;
  const trade = (value: number): string => inUnit(value, unit, tradeUnit ?? unit, tradePlaces ?? places);
  return {
    quantity: result.quantity,
    unit,
    value: roundHalfEven(result.estimate.value, places),
    low: interval && roundHalfEven(interval.low, places),
    high: interval && roundHalfEven(interval.high, places),
    trade:
      tradeUnit === null
        ? null
        : {
            unit: tradeUnit,
            value: trade(result.estimate.value),
            low: interval && trade(interval.low),
            high: interval && trade(interval.high),
          },
    specimens: result.specimens,
    submissions: result.submissions,
    testers: result.testers,
    rigs: result.rigs,
    note: result.note,
  };
}

import type { QuantityKind } from '../../contract/endpoints/editions.js';
import { intervalOf } from '../results/estimate.js';
import type { EditionQuantity } from '../results/quantity.js';
import type { Result } from '../results/results.js';
import { convert } from '../../measurement/units/convert.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import { UNITS } from '../../measurement/units/unit-table.js';
import type { UnitSymbol } from '../../measurement/units/unit-table.js';
import type { Figure } from '../../contract/documents/release-documents.js';

/** How a quantity is shown. */
export interface Shown {
  readonly unit: string;
  readonly places: number;
  readonly tradeUnit: string | null;
  readonly tradePlaces: number | null;
}

/** How quantities are shown that no category of the scheme ranks. */
export const USUAL: Readonly<Record<QuantityKind, Shown>> = {
  breakingForce: { unit: 'N', places: 1, tradeUnit: 'lbf', tradePlaces: 2 },
  apparentStress: { unit: 'MPa', places: 1, tradeUnit: 'psi', tradePlaces: 0 },
  diameter: { unit: 'mm', places: 3, tradeUnit: 'in', tradePlaces: 4 },
  outOfRoundness: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
  linearDensity: { unit: 'tex', places: 2, tradeUnit: 'den', tradePlaces: 0 },
  retention: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
  strengthHonesty: { unit: '%', places: 1, tradeUnit: null, tradePlaces: null },
};

/** A published value in another unit, rounded to its places. */
export function inUnit(value: number, from: string, to: string, places: number): string {
  const { factor, divisor } = UNITS[from as UnitSymbol];
  return roundHalfEven(convert((value * Number(factor)) / Number(divisor), to as UnitSymbol), places);
}

/** A result as a published figure: value, 95 % interval, evidence, and the same in the trade's unit. */
export const toFigure = (result: Result, shown: Shown): Figure =>
  shownFigure(result.of, result.estimate.value, intervalOf(result.estimate), result, shown);

type Behind = Pick<Figure, 'specimens' | 'submissions' | 'testers' | 'rigs' | 'note'>;

/** A value with its interval as shown, rounded half-even to its places. */
export function shownFigure(
  { key, name }: Pick<EditionQuantity, 'key' | 'name'>,
  value: number,
  interval: { readonly low: number; readonly high: number } | null,
  { specimens, submissions, testers, rigs, note }: Behind,
  { unit, places, tradeUnit, tradePlaces }: Shown,
): Figure {
  const si = (one: number): string => roundHalfEven(one, places);
  const trade = (one: number): string => inUnit(one, unit, tradeUnit ?? unit, tradePlaces ?? places);
  return {
    quantity: key,
    name,
    unit,
    value: si(value),
    low: interval && si(interval.low),
    high: interval && si(interval.high),
    trade:
      tradeUnit === null
        ? null
        : { unit: tradeUnit, value: trade(value), low: interval && trade(interval.low), high: interval && trade(interval.high) },
    specimens,
    submissions,
    testers,
    rigs,
    note,
  };
}

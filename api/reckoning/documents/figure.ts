import type { QuantityKind } from '../../contract/endpoints/schemes.js';
import { intervalOf } from '../results/estimate.js';
import type { EditionQuantity } from '../results/quantity.js';
import type { Result } from '../results/results.js';
import { convert } from '../../measurement/units/convert.js';
import { ExactDecimal } from '../../measurement/units/exact-decimal.js';
import { roundInterval } from '../../measurement/units/round-to-uncertainty.js';
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

/** A computed value in another unit, with the 14 digits that are sure of it. */
export function inUnit(value: number, from: string, to: string): number {
  const { factor, divisor } = UNITS[from as UnitSymbol];
  return Number(convert(new ExactDecimal(value).times(factor).div(divisor).toString(), to as UnitSymbol));
}

/** A result as a published figure: value, 95 % interval, evidence, and the same in the trade's unit. */
export const toFigure = (result: Result, shown: Shown): Figure =>
  shownFigure(result.of, result.estimate.value, intervalOf(result.estimate), result, shown);

type Behind = Pick<Figure, 'specimens' | 'submissions' | 'testers' | 'rigs' | 'note'>;

/** A value with its interval as shown: both to the second digit of half the interval's width in the unit shown, never finer than its places. */
export function shownFigure(
  { key, name }: Pick<EditionQuantity, 'key' | 'name'>,
  value: number,
  interval: { readonly low: number; readonly high: number } | null,
  { specimens, submissions, testers, rigs, note }: Behind,
  { unit, places, tradeUnit, tradePlaces }: Shown,
): Figure {
  const si = roundInterval(value, interval, places);
  const toTrade = (one: number): number => inUnit(one, unit, tradeUnit ?? unit);
  const inTrade = interval && { low: toTrade(interval.low), high: toTrade(interval.high) };
  return {
    quantity: key,
    name,
    unit,
    ...si,
    trade: tradeUnit === null ? null : { unit: tradeUnit, ...roundInterval(toTrade(value), inTrade, tradePlaces ?? places) },
    specimens,
    submissions,
    testers,
    rigs,
    note,
  };
}

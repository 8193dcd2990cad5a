import { convert } from '../measurement/units/convert.js';
import { findUnit } from '../measurement/units/find-unit.js';
import type { ReadingRole } from '../contract/submission-content.js';
import type { CheckInput } from './check-input.js';
import { instrumentsFor } from './instruments-for.js';

/** Readings of one role, condition and unit, as they stood on the display: a spreadsheet's lost zeros are put back. */
export interface DisplayedReadings {
  readonly unit: string;
  readonly decimals: number;
  /** Smallest step of the display, in units of the last decimal; 1 unless a named instrument has a step of 2, 5, 10, 20, … of them. */
  readonly step: number;
  readonly readings: readonly { readonly number: number; readonly text: string }[];
}

const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;

const padded = (text: string, decimals: number): string => {
  const [whole = '', fraction = ''] = text.split('.');
  return decimals === 0 ? whole : `${whole}.${fraction.padEnd(decimals, '0')}`;
};

/** @returns one group for each condition and unit in which the role was read, counted or not */
export function displayedReadings({ specimens, instruments }: CheckInput, role: ReadingRole): DisplayedReadings[] {
  const all = specimens.flatMap(({ number, condition, readings }) =>
    readings
      .filter((reading) => reading.role === role)
      .map(({ enteredText, enteredUnit }) => ({ number, condition, enteredText, enteredUnit })),
  );
  const decimalsByUnit = new Map<string, number>();
  for (const { enteredText, enteredUnit } of all) {
    decimalsByUnit.set(enteredUnit, Math.max(decimalsByUnit.get(enteredUnit) ?? 0, decimalsOf(enteredText)));
  }
  const resolutions = instrumentsFor(role, instruments).map(({ resolutionSi }) => resolutionSi);
  return [...Map.groupBy(all, ({ condition, enteredUnit }) => `${condition} ${enteredUnit}`).values()].map((group) => {
    const unit = group[0]?.enteredUnit ?? '';
    const decimals = decimalsByUnit.get(unit) ?? 0;
    return {
      unit,
      decimals,
      step: stepOf(resolutions, unit, decimals),
      readings: group.map(({ number, enteredText }) => ({ number, text: padded(enteredText, decimals) })),
    };
  });
}

function stepOf(resolutionsSi: readonly string[], unit: string, decimals: number): number {
  const steps = resolutionsSi.map((resolution) => Number(convert(resolution, findUnit(unit))) * 10 ** decimals);
  const finest = Math.min(...steps);
  const whole = Math.round(finest);
  // A resolution stated in another unit than the display's says nothing of the display's digits.
  return /^[125]0*$/.test(String(whole)) && Math.abs(finest - whole) < 1e-6 ? whole : 1;
}

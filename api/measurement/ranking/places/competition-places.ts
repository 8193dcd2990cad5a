import { Decimal } from 'decimal.js';
import { MeasurementError } from '../../errors.js';

/** Whether a larger or a smaller value is better. */
export type Direction = 'more' | 'less';

/**
 * Competition places (1-2-2-4) of published values; equal decimals share a place.
 *
 * Formula: place = 1 + number of values that are better
 * @param values published decimals, any number of them [any one unit]
 * @param direction which values are better
 * @returns place of each value, in the order given [1]
 * @throws MeasurementError 'ranking/not-a-number' for a text that is not a finite decimal
 * @see COMMON-PRACTICE
 * @example competitionPlaces(['9.0', '8.50', '8.5', '7'], 'more') // [1, 2, 2, 4]
 */
export function competitionPlaces(values: readonly string[], direction: Direction): number[] {
  const exact = values.map(toExact);
  const sorted = exact
    .map((value, i) => ({ value, i }))
    .sort((a, b) => (direction === 'more' ? b.value.cmp(a.value) : a.value.cmp(b.value)));
  const places = new Array<number>(values.length).fill(0);
  sorted.forEach(({ value, i }, position) => {
    const before = sorted[position - 1];
    places[i] = before?.value.eq(value) ? (places[before.i] ?? position) : position + 1;
  });
  return places;
}

function toExact(text: string): Decimal {
  if (!/^-?\d+(\.\d+)?$/.test(text)) {
    throw new MeasurementError(
      'ranking/not-a-number',
      `competitionPlaces: found "${text}", expected a decimal such as 820.3. Rank published values only.`,
    );
  }
  return new Decimal(text);
}

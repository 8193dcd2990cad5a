import { comparePairs } from './pairs/compare-pairs.js';
import { couldBeFirst } from './pairs/could-be-first.js';
import { chanceAhead, drawPlaces, pairChances, placeChances } from './draws/draw-places.js';
import { placeSets } from './pairs/place-sets.js';
import type { PlaceSet } from './pairs/place-sets.js';

export interface RowCertainty extends PlaceSet {
  readonly id: string;
  readonly place: number;
  /** whether it belongs to those that hold the best at the level of the table */
  readonly couldBeFirst: boolean;
  readonly chanceOfFirst: number;
  readonly chanceOfFirstFive: number;
  /** chance that this row and the next are in the right order; null in the last row */
  readonly chanceAheadOfNext: number | null;
}

export interface TableCertainty {
  /** by how many uncertainties of their difference two rows must differ to be told apart; null when there is nothing to compare */
  readonly criticalValue: number | null;
  /** best first; rows of equal place by id */
  readonly rows: readonly RowCertainty[];
  /** n·n in the order of the rows: chance that row i is ahead of row j, a shared place counting half; null where not asked for and for long tables */
  readonly pairChances: Float64Array | null;
}

/** Longest table whose pairs are all told: their number grows with the square. */
const MOST_PAIRED = 150;

/** A table of n rows with B draws. */
export interface DrawnTable {
  readonly ids: readonly string[];
  /** as published, more is better: makes the places */
  readonly published: Float64Array;
  /** not rounded, more is better: is compared */
  readonly goodness: Float64Array;
  readonly errors: Float64Array;
  readonly places: Uint16Array;
  readonly differenceUncertainty: Float64Array;
  /** n·n: ν_ij of each difference; normal tails where it is not there */
  readonly degreesOfFreedom?: Float64Array;
  readonly level: number;
  /** whether the chances of all pairs are wanted */
  readonly hasPairs?: boolean;
  /** places when the scheme breaks ties of the published values */
  readonly brokenPlaces?: Uint16Array;
}

/**
 * How sure the places of one table are.
 *
 * Formula: place intervals and groups by comparison of all pairs, group of equals by group of equals, who could be first by comparison with the best; chances as shares of the draws
 * @param table n rows with their draws
 * @returns critical value and rows, best first
 * @throws nothing: the caller checks the shapes
 * @see MRSW-2023
 * @example tableCertainty(table).rows[0] // { id: 'a', place: 1, low: 1, high: 1, group: 1 }
 */
export function tableCertainty(table: DrawnTable): TableCertainty {
  const { ids, published, goodness, errors, places, differenceUncertainty, level, hasPairs = false } = table;
  const n = ids.length;
  const ownPlaces = [...(table.brokenPlaces ?? drawPlaces(published, new Float64Array(n)))];
  const degreesOfFreedom = table.degreesOfFreedom ?? new Float64Array(n * n).fill(Infinity);
  const compared = { goodness, errors, differenceUncertainty, degreesOfFreedom };
  const comparison = comparePairs(compared, level);
  const { isAhead, criticalValue } = comparison;
  const could = couldBeFirst(compared, comparison, level);
  const sets = placeSets(isAhead, ownPlaces);
  const chances = placeChances(places, n);
  const order = ids.map((_, i) => i).sort((a, b) => ownPlaces[a]! - ownPlaces[b]! || (ids[a]! < ids[b]! ? -1 : 1));
  const rows = order.map((i, position) => {
    const next = order[position + 1];
    return {
      id: ids[i]!,
      place: ownPlaces[i]!,
      ...sets[i]!,
      couldBeFirst: could[i] === 1,
      chanceOfFirst: chances[i]!.ofFirst,
      chanceOfFirstFive: chances[i]!.ofFirstFive,
      chanceAheadOfNext: next === undefined ? null : chanceAhead(places, n, i, next),
    };
  });
  return { criticalValue, rows, pairChances: hasPairs && n <= MOST_PAIRED ? pairChances(places, n, order) : null };
}

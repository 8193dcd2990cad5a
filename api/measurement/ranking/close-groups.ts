import type { PlaceInterval } from './place-intervals.js';

/**
 * Groups of neighbours that are too close to call, from the simultaneous place intervals.
 *
 * Formula: going down the table, a row opens the next group when its interval no longer holds the place where the open group began; so group 1 is every row at the
 * top whose interval holds place 1
 * @param intervals place interval of each row, in the order of the table [1]
 * @returns group of each row, from 1 [1]
 * @throws nothing
 * @see MRSW-2023
 * @example closeGroups([{ low: 1, high: 2 }, { low: 1, high: 2 }, { low: 3, high: 3 }]) // [1, 1, 2]
 */
export function closeGroups(intervals: readonly PlaceInterval[]): number[] {
  let group = 1;
  let began = 1;
  return intervals.map(({ low }, position) => {
    if (low > began) {
      group += 1;
      began = position + 1;
    }
    return group;
  });
}

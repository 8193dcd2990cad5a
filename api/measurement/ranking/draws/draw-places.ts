import { sortedPlaces } from '../places/sorted-places.js';

/**
 * Places of the entries in every draw.
 *
 * Formula: competition places of g + e, more is better
 * @param goodness n values [any one unit]
 * @param errors B·n drawn deviations, draw by draw [same unit]
 * @returns B·n places, draw by draw [1]
 * @throws nothing: the caller checks the shapes
 * @see JCGM-101
 * @example drawPlaces(Float64Array.of(2, 1), Float64Array.of(0, 0, 0, 5)) // [1, 2, 2, 1]
 */
export function drawPlaces(goodness: Float64Array, errors: Float64Array): Uint16Array {
  const n = goodness.length;
  const places = new Uint16Array(errors.length);
  const sorter = sortedPlaces(n);
  for (let from = 0; from < errors.length; from += n) {
    for (let i = 0; i < n; i++) sorter.keys[i] = -(goodness[i]! + errors[from + i]!);
    sorter.writePlaces(places, from);
  }
  return places;
}

/** Chances of an entry in its table. */
export interface PlaceChances {
  /** of place 1, shared or not */
  readonly ofFirst: number;
  readonly ofFirstFive: number;
}

/**
 * Share of the draws in which each entry is first, and among the first five.
 *
 * Formula: draws with place 1, with place ≤ 5, over all draws
 * @param places B·n places, draw by draw [1]
 * @param n number of entries [1]
 * @returns chances of each entry [1]
 * @throws nothing
 * @see JCGM-101
 * @example placeChances(Uint16Array.of(1, 2, 2, 1), 2) // [{ ofFirst: 0.5, ofFirstFive: 1 }, { ofFirst: 0.5, ofFirstFive: 1 }]
 */
export function placeChances(places: Uint16Array, n: number): PlaceChances[] {
  const [first, firstFive] = [new Uint32Array(n), new Uint32Array(n)];
  for (let from = 0; from < places.length; from += n) {
    for (let i = 0; i < n; i++) {
      const place = places[from + i]!;
      if (place === 1) first[i]! += 1;
      if (place <= 5) firstFive[i]! += 1;
    }
  }
  const draws = places.length / n;
  return Array.from(first, (count, i) => ({ ofFirst: count / draws, ofFirstFive: firstFive[i]! / draws }));
}

/**
 * Share of the draws in which one entry is before another; a tie counts half.
 *
 * Formula: (draws with place_i < place_j + ½ draws with equal places)/draws
 * @param places B·n places, draw by draw [1]
 * @param n number of entries [1]
 * @param i position of the one [1]
 * @param j position of the other [1]
 * @returns chance [1]
 * @throws nothing
 * @see JCGM-101
 * @example chanceAhead(Uint16Array.of(1, 2, 1, 1), 2, 0, 1) // 0.75
 */
export function chanceAhead(places: Uint16Array, n: number, i: number, j: number): number {
  let halves = 0;
  for (let from = 0; from < places.length; from += n) {
    const [mine, theirs] = [places[from + i]!, places[from + j]!];
    halves += mine < theirs ? 2 : mine === theirs ? 1 : 0;
  }
  return halves / 2 / (places.length / n);
}

/**
 * Chances that one entry is ahead of another, for every pair.
 *
 * Formula: share of draws with place i < place j, plus half of those where they are equal
 * @param places B·n places, draw by draw
 * @param n entries of a draw [1]
 * @param order positions of the entries in the order in which they are told
 * @returns n·n chances [1], at i·n + j in that order; 0.5 on the diagonal
 * @throws nothing: the caller checks the shapes
 * @see JCGM-101
 * @example pairChances(Uint16Array.of(1, 2, 1, 1), 2, [0, 1]) // [0.5, 0.75, 0.25, 0.5]
 */
export function pairChances(places: Uint16Array, n: number, order: readonly number[]): Float64Array {
  const wins = new Float64Array(n * n);
  const own = new Uint16Array(n);
  for (let start = 0; start < places.length; start += n) {
    for (let i = 0; i < n; i++) own[i] = places[start + order[i]!]!;
    for (let i = 0; i < n; i++) {
      for (let j = i + 1; j < n; j++) {
        if (own[i]! > own[j]!) continue;
        wins[i * n + j]! += own[i]! < own[j]! ? 1 : 0.5;
      }
    }
  }
  const draws = places.length / n;
  for (let i = 0; i < n; i++) {
    wins[i * n + i] = 0.5;
    for (let j = i + 1; j < n; j++) {
      wins[i * n + j] = wins[i * n + j]! / draws;
      wins[j * n + i] = 1 - wins[i * n + j]!;
    }
  }
  return wins;
}

/** Room for sorting one draw, made once and used for every draw. */
export interface PlaceSorter {
  /** values to place, the smallest first; filled by the caller, spoiled by sorting [any one unit] */
  readonly keys: Float64Array;
  /**
   * Writes competition places of the keys and returns nothing.
   * @param places where to [1]
   * @param from position of the first place
   */
  writePlaces(places: Uint16Array, from: number): void;
}

/** A place fits 16 bits, and so does the position that is packed into a key. */
export const MOST_ENTRIES = 4096;

/** Up to here one draw is sorted faster from the order of the draw before, in which most stand near where they belong. */
const MOST_INSERTED = 250;

/**
 * Makes a sorter that places the same number of values again and again without making an object.
 *
 * Formula: the position replaces the last 12 bits of each key, so that one sort of plain numbers orders both; keys equal in the other 40 bits of their fraction share a place
 * @param count number of values, at most 4096 [1]
 * @returns the sorter
 * @throws nothing: the caller checks the number of entries
 * @see COMMON-PRACTICE
 * @example sortedPlaces(3).keys.length // 3
 */
export function sortedPlaces(count: number): PlaceSorter {
  const keys = new Float64Array(count);
  const sorted = new Float64Array(count);
  const [packed, words] = [new Uint32Array(keys.buffer), new Uint32Array(sorted.buffer)];
  const order = Uint16Array.from(keys.keys());
  // The low word of a double comes first on every machine that Node runs on.
  const positionBits = MOST_ENTRIES - 1;
  return {
    keys,
    writePlaces(places, from) {
      for (let i = 0; i < count; i++) {
        keys[i] = keys[i]! + 0; // −0 becomes 0, equal to it in every bit
        packed[2 * i] = (packed[2 * i]! & ~positionBits) | i;
      }
      if (count > MOST_INSERTED) sorted.set(keys.sort());
      else insertInOrder(keys, order, sorted);
      let place = 0;
      for (let i = 0; i < count; i++) {
        const isTied = i > 0 && words[2 * i + 1] === words[2 * i - 1] && ((words[2 * i]! ^ words[2 * i - 2]!) & ~positionBits) === 0;
        if (!isTied) place = i + 1;
        order[i] = words[2 * i]! & positionBits;
        places[from + order[i]!] = place;
      }
    },
  };
}

function insertInOrder(keys: Float64Array, order: Uint16Array, sorted: Float64Array): void {
  for (let i = 0; i < keys.length; i++) {
    const key = keys[order[i]!]!;
    let at = i;
    for (; at > 0 && sorted[at - 1]! > key; at--) sorted[at] = sorted[at - 1]!;
    sorted[at] = key;
  }
}

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
  const words = new Uint32Array(keys.buffer);
  // The low word of a double comes first on every machine that Node runs on.
  const positionBits = MOST_ENTRIES - 1;
  return {
    keys,
    writePlaces(places, from) {
      for (let i = 0; i < count; i++) {
        keys[i] = keys[i]! + 0; // −0 becomes 0, equal to it in every bit
        words[2 * i] = (words[2 * i]! & ~positionBits) | i;
      }
      keys.sort();
      let place = 0;
      for (let i = 0; i < count; i++) {
        const isTied = i > 0 && words[2 * i + 1] === words[2 * i - 1] && ((words[2 * i]! ^ words[2 * i - 2]!) & ~positionBits) === 0;
        if (!isTied) place = i + 1;
        places[from + (words[2 * i]! & positionBits)] = place;
      }
    },
  };
}

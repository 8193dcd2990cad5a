interface TiedTable {
  /** places of one table, or of many draws one after the other [1] */
  readonly places: { [index: number]: number };
  /** the same of each category */
  readonly categories: readonly { readonly places: { readonly [index: number]: number } }[];
  /** entries of one table [1] */
  readonly m: number;
  /** where the table begins [1] */
  readonly from: number;
}

/**
 * Breaks the ties of one table, in its place.
 *
 * Formula: a tie goes to the entry with more first places, then more seconds, and so on; what is still equal stays tied
 * @param table its places and those of its categories, the number of its entries and where it begins [1]
 * @returns nothing: the places are changed
 * @throws nothing: the caller checks the shapes
 * @see COMMON-PRACTICE
 * @example breakTies(tied) // undefined
 */
export function breakTies(table: TiedTable): void {
  const { places, categories, m, from } = table;
  const tied = new Map<number, number[]>();
  for (let i = 0; i < m; i++) tied.set(places[from + i]!, [...(tied.get(places[from + i]!) ?? []), i]);
  for (const [place, entries] of tied) {
    if (entries.length < 2) continue;
    // The better tally is the smaller one when sorted places are compared one by one.
    const tallies = entries.map((i) => categories.map((category) => category.places[from + i]!).sort((a, b) => a - b));
    entries.forEach((i, one) => {
      places[from + i] = place + tallies.filter((tally) => isBetter(tally, tallies[one]!)).length;
    });
  }
}

function isBetter(a: readonly number[], b: readonly number[]): boolean {
  const k = a.findIndex((place, position) => place !== b[position]);
  return k !== -1 && a[k]! < b[k]!;
}

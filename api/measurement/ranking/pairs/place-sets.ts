export interface PlaceSet {
  readonly low: number;
  readonly high: number;
  /** too-close-to-call group, 1 at the top */
  readonly group: number;
}

/**
 * Place intervals and groups from what was told apart.
 *
 * Formula: low = 1 + number ahead, or the published place where rounding made a tie; high = n − number behind. Group 1 are all whose interval holds place 1; each next group are those with nobody of the rest ahead
 * @param isAhead n·n: 1 at i·n + j when i is told to be better than j
 * @param places published place of each entry [1]
 * @returns interval and group of each entry [1]
 * @throws nothing: the caller checks the shapes
 * @see MRSW-2023
 * @example placeSets(Uint8Array.of(0, 1, 0, 0), [1, 2]) // [{ low: 1, high: 1, group: 1 }, { low: 2, high: 2, group: 2 }]
 */
export function placeSets(isAhead: Uint8Array, places: readonly number[]): PlaceSet[] {
  const n = places.length;
  const groups = new Uint16Array(n);
  const columns = countAhead(isAhead, n);
  // Whoever is ahead of an entry has strictly fewer ahead of itself, so this order settles every group after those above it.
  const order = places.map((_, i) => i).sort((a, b) => columns[a]! - columns[b]!);
  for (const j of order) {
    let group = 1;
    for (let i = 0; i < n; i++) if (isAhead[i * n + j] === 1 && groups[i]! >= group) group = groups[i]! + 1;
    groups[j] = group;
  }
  return places.map((place, i) => {
    let behind = 0;
    for (let j = 0; j < n; j++) behind += isAhead[i * n + j]!;
    return { low: Math.min(place, 1 + columns[i]!), high: n - behind, group: groups[i]! };
  });
}

function countAhead(isAhead: Uint8Array, n: number): Uint16Array {
  const counts = new Uint16Array(n);
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) counts[j] = counts[j]! + isAhead[i * n + j]!;
  return counts;
}

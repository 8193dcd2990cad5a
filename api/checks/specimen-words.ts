const MOST_PARTS = 20;

/** Numbers of specimens as people write them, e.g. "1–8, 12"; long lists end with their count. Numbers in ascending order. */
export function specimenWords(numbers: readonly number[]): string {
  const runs: [number, number][] = [];
  for (const number of new Set(numbers)) {
    const last = runs.at(-1);
    if (last?.[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  const parts = runs.map(([from, to]) => (from === to ? String(from) : `${from}–${to}`));
  return parts.length <= MOST_PARTS ? parts.join(', ') : `${parts.slice(0, MOST_PARTS).join(', ')}, … (${numbers.length} in all)`;
}

/** The same with the noun: "specimen 2", "specimens 1–8, 12". */
export const namedSpecimens = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? 'specimen' : 'specimens'} ${specimenWords(numbers)}`;

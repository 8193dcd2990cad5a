/** An entry's place in one table; null when it was listed but not placed. */
export interface PlaceOfEntry {
  readonly id: string;
  readonly place: number | null;
}

export interface PlaceMovement {
  readonly kind: 'moved' | 'unchanged' | 'new' | 'returned';
  /** places gained, negative when lost; null without a place in both */
  readonly places: number | null;
  /** editions in a row in first place, this one included */
  readonly runAtTop: number;
}

/**
 * Movement of each placed entry against the editions before.
 *
 * Formula: places gained = place before − place now; an entry that was placed in an earlier edition but not in the last one has returned
 * @param current places now
 * @param previousEditions places in earlier editions, newest first
 * @returns movement by id
 * @throws nothing
 * @see COMMON-PRACTICE
 * @example movement([{ id: 'a', place: 1 }], [[{ id: 'a', place: 3 }]]).get('a') // { kind: 'moved', places: 2, runAtTop: 1 }
 */
export function movement(
  current: readonly PlaceOfEntry[],
  previousEditions: readonly (readonly PlaceOfEntry[])[],
): Map<string, PlaceMovement> {
  const earlier = previousEditions.map((edition) => new Map(edition.map(({ id, place }) => [id, place])));
  return new Map(current.map(({ id, place }) => [id, { ...against(id, place, earlier), runAtTop: runAtTop(id, place, earlier) }]));
}

function against(id: string, place: number | null, earlier: readonly Map<string, number | null>[]): Omit<PlaceMovement, 'runAtTop'> {
  const before = earlier[0]?.get(id) ?? null;
  if (before === null) return { kind: earlier.some((edition) => (edition.get(id) ?? null) !== null) ? 'returned' : 'new', places: null };
  if (place === null) return { kind: 'unchanged', places: null };
  return { kind: before === place ? 'unchanged' : 'moved', places: before - place };
}

function runAtTop(id: string, place: number | null, earlier: readonly Map<string, number | null>[]): number {
  if (place !== 1) return 0;
  const end = earlier.findIndex((edition) => edition.get(id) !== 1);
  return 1 + (end === -1 ? earlier.length : end);
}

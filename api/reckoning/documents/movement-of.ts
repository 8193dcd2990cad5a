import type { Movement } from '../../contract/documents/release-documents.js';

/** Movement of a row; a row without a place has none. */
export function movementOf(movement: Movement | undefined, place: number | null): Movement {
  if (place === null) return { kind: 'notComparable', places: null, runAtTop: 0 };
  return movement ?? { kind: 'new', places: null, runAtTop: 0 };
}

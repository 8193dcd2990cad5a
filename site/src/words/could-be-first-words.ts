import { say } from './say.js';
interface Row {
  readonly place: number | null;
  readonly couldBeFirst?: boolean | null | undefined;
}

/** Who may be the best of a table, in a sentence; null where the release does not tell. */
export function couldBeFirstWords(rows: readonly Row[]): string | null {
  const placed = rows.filter(({ place }) => place !== null);
  const first = placed.filter(({ couldBeFirst }) => couldBeFirst === true).length;
  if (first === 0) return null;
  if (first === 1) return say`The best of this table is the one in first place, with 95 % confidence.`;
  return first === placed.length
    ? say`Any of these ${first} variants could be the best: the evidence rules out none of them.`
    : say`The best of this table is one of ${first} variants of ${placed.length}, with 95 % confidence.`;
}

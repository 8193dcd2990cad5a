import { say } from './say.js';
/** What a quiet mark beside a row says: whether its variant could be first, and its group. */
export interface Marked {
  place: number | null;
  group: number | null;
  couldBeFirst?: boolean | null | undefined;
}

/** In words, for a reader who sees no mark. */
export function markWords({ place, group, couldBeFirst }: Marked): string {
  if (place === null) return say`not placed`;
  const parts = [couldBeFirst ? say`could be first` : null, group === null ? null : say`group ${group}`];
  return parts.filter((part) => part !== null).join(', ');
}

/** How many of the placed the set holds that has the best of the table with 95 %; null where the release does not tell the set. */
export function couldBeFirstCount(rows: readonly Marked[]): number | null {
  const count = rows.filter(({ place, couldBeFirst }) => place !== null && couldBeFirst === true).length;
  return count === 0 ? null : count;
}

/** Whether a thin rule stands above a row: where the set of those that could be first ends, and where the placed rows end; rows without a place among them part nothing. */
export function isRuled(rows: readonly Marked[], index: number): boolean {
  if (index === 0) return false;
  const ends = [rows.findLastIndex(({ couldBeFirst }) => couldBeFirst === true), rows.findLastIndex(({ place }) => place !== null)];
  return ends.includes(index - 1);
}

import { say } from './say.js';
import type { CategoryRow } from '../../../api/contract/documents/release-documents.js';
import { couldBeFirstCount, type Marked } from './marks.js';
import { fullName } from './variant-words.js';

/** `the best is one of 8 (95 %)`, `no other could be the best (95 %)`; empty where the release does not tell the set. */
export function setWords(rows: readonly Marked[]): string {
  const count = couldBeFirstCount(rows);
  if (count === null) return '';
  if (count === 1) return say`no other could be the best (95 %)`;
  return say`the best is one of ${count} (95 %)`;
}

/** The same of an overall order, in words also where a release tells groups alone or nothing. */
export function sureWords(rows: readonly Marked[]): string {
  const allowed = rows.filter(({ group }) => group === 1).length;
  return (
    setWords(rows) ||
    (allowed > 1
      ? say`${allowed} are too close to call for it`
      : allowed === 0
        ? say`how sure that is was not stated for this edition`
        : '')
  );
}

/** Who is first in a category, with the value and the set that could be; null where nobody has a place. */
export function leadOf(rows: readonly CategoryRow[]): { names: string; figure: CategoryRow['figure']; set: string } | null {
  const first = rows.filter(({ place }) => place === 1);
  const [one] = first;
  if (!one) return null;
  return { names: first.map(({ variant }) => fullName(variant)).join(say` and `), figure: one.figure, set: setWords(rows) };
}

/** Why two rows whose intervals do not meet can stand too close to call, and more rows in the first group than could be first. */
export const WHY_APART = say`Each interval is for its value alone. Groups and places allowed hold for all pairs of the table at once, and among so many some look apart by chance: so they ask more of a pair than its two intervals do. Who could be first asks of the first place only.`;

import type { Category, CategoryRow } from '../../../api/contract/documents/release-documents.js';
import { couldBeFirstCount, type Marked } from './marks.js';
import { fullName } from './variant-words.js';

/** `best of the table is one of these 8 (95 %)`, `ahead of all others (95 %)`; empty where the release does not tell the set. */
export function setWords(rows: readonly Marked[]): string {
  const count = couldBeFirstCount(rows);
  if (count === null) return '';
  if (count <= 1) return 'ahead of all others (95 %)';
  return `the best is one of ${count} (95 %)`;
}

/** What a person could quote of a category: `Tidewick Brinearrow, PE 1.0, moss green: 2896 MPa; the best is one of 8 (95 %)`. */
export function leadWords(category: Pick<Category, 'unit'>, rows: readonly CategoryRow[]): string {
  const first = rows.filter(({ place }) => place === 1);
  const [one] = first;
  if (!one) return '';
  const set = setWords(rows);
  return `${first.map(({ variant }) => fullName(variant)).join(' and ')}: ${one.figure.value} ${category.unit}${set && `; ${set}`}`;
}

/** Why two rows whose intervals do not meet can stand too close to call. */
export const WHY_APART =
  'Each interval is for its value alone. Among so many rows some pairs look apart by chance, so a table asks more of a pair before it calls one ahead.';

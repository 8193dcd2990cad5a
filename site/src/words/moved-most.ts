import { groupOf } from '../../../api/contract/cell-groups.js';
import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';

type Change = NonNullable<EditionDocument['erratum']>['changes'][number];

/** A number, with its unit or without; intervals and words are none. */
const numberIn = (cell: string | null): number => (/^-?[\d.]+(?: \S+)?$/.test(cell ?? '') ? Number.parseFloat(cell ?? '') : NaN);

/** How far a cell moved: places by how many they are, values by their share. */
function moved({ where, before, after }: Change): number {
  const from = numberIn(before);
  const far = Math.abs(from - numberIn(after));
  return groupOf(where) === 'places' ? far : far / Math.abs(from);
}

/** The cells that moved most, at most so many, furthest first. */
export const movedMost = (changes: readonly Change[], most: number): Change[] =>
  changes
    .filter((change) => moved(change) > 0)
    .toSorted((one, other) => moved(other) - moved(one))
    .slice(0, most);

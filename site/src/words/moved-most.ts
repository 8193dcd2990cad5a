import { groupOf } from '../../../api/contract/cell-groups.js';
import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';
import { say } from './say.js';
import { whereWords } from './where-words.js';

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

/** The same in words; of one variant that moved in several places the name is said once. @param names what slugs and codes are called */
export function movedMostWords(changes: readonly Change[], most: number, names: ReadonlyMap<string, string>): string {
  const ofVariant = Map.groupBy(movedMost(changes, most), ({ where }) => variantIn(where));
  return [...ofVariant]
    .map(([slug, own]) => {
      const places = own.map(({ where, before, after }) => {
        const rest = where.split(', ').filter((part) => part !== slug);
        return say`${whereWords(rest.join(', '), names)} from ${before} to ${after}`;
      });
      return `${names.get(slug) ?? slug}: ${places.join('; ')}`;
    })
    .join('. ');
}

/** Cells are named by table, variant and what of it. */
const variantIn = (where: string): string => where.split(', ')[1] ?? where;

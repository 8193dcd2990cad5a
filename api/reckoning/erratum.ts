/** What a later revision changed, cell by cell, and what that means for places. Pure. */
import type { CategoryDocument, EditionDocument } from '../contract/documents/release-documents.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Correction, RevisionCells } from './release-inputs.js';

type Erratum = NonNullable<EditionDocument['erratum']>;

interface Revision {
  readonly edition: EditionDocument;
  readonly categories: readonly CategoryDocument[];
}

/** Where the value of a variant in a category stands. */
export const valueCell = (category: string, variant: string): string => `${category}, ${variant}, value`;

/** Every cell that readers see in a table, by where it stands. */
export function cellsOf({ edition, categories }: Revision): RevisionCells {
  const overall = edition.overall.flatMap(({ variant, place, placeIfIncluded, score }) => [
    [`overall, ${variant.slug}, place`, place === null ? `(${placeIfIncluded ?? 'unplaced'})` : String(place)] as const,
    [`overall, ${variant.slug}, score`, score] as const,
  ]);
  const byCategory = categories.flatMap(({ category, rows }) =>
    rows.flatMap(({ variant, place, figure }) => [
      [`${category.code}, ${variant.slug}, place`, String(place ?? 'unplaced')] as const,
      [valueCell(category.code, variant.slug), `${figure.value} ${figure.unit}`] as const,
    ]),
  );
  const hasGroups = edition.overall.some(({ group }) => group !== null);
  const top = edition.overall.filter(({ place, group }) => (hasGroups ? group === 1 : place === 1)).map(({ variant }) => variant.slug);
  return { cells: Object.fromEntries([...overall, ...byCategory]), top };
}

/** Expectations of a correction that are not what a revision shows. */
export const unmetExpectations = (expects: Correction['expects'], { cells }: RevisionCells): InputFault[] =>
  expects.flatMap(({ where, before }, index) =>
    cells[where] === before
      ? []
      : [
          {
            pointer: `/erratum/expects/${index}`,
            code: 'expected-otherwise',
            detail: `${where}: the correction expects "${before}"; published is ${cells[where] === undefined ? 'no such cell' : `"${cells[where]}"`}.`,
          },
        ],
  );

/** The erratum with its changed cells and their consequences, counted. */
export function computeErratum({ reasonCode, words, expects, before }: Correction, revision: Revision): Erratum {
  const after = cellsOf(revision);
  const changes = [...new Set([...Object.keys(before.cells), ...Object.keys(after.cells)])]
    .filter((where) => before.cells[where] !== after.cells[where])
    .sort()
    .map((where) => ({ where, before: before.cells[where] ?? null, after: after.cells[where] ?? null }));
  const count = (ending: string) => changes.filter(({ where }) => where.endsWith(ending)).length;
  const top = before.top.join() === after.top.join() ? 'top group unchanged' : 'top group changed';
  const plural = (n: number, noun: string) => `${n} ${noun}${n === 1 ? '' : 's'} changed`;
  return {
    reasonCode,
    words,
    expected: [...expects],
    changes,
    consequences: `${plural(count(', value'), 'value')}, ${plural(count(', place'), 'place')}, ${top}`,
  };
}

/** What a later revision changed, cell by cell, and what that means for places. Pure. */
import type { EditionDocument } from '../contract/documents/release-documents.js';
import type { InputFault } from '../platform/errors/problem.js';
import { groupOf } from '../contract/cell-groups.js';
import { changesBetween } from './cells.js';
import type { Correction, RevisionCells } from './release-inputs.js';

type Erratum = NonNullable<EditionDocument['erratum']>;

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
export function computeErratum({ reasonCode, words, expects, before }: Correction, after: RevisionCells): Erratum {
  const changes = changesBetween(before, after);
  const count = (ending: string) => changes.filter(({ where }) => where.endsWith(ending)).length;
  const top = before.top.join() === after.top.join() ? 'top group unchanged' : 'top group changed';
  const plural = (n: number, one: string, several = `${one}s`) => `${n} ${n === 1 ? one : several} changed`;
  const besides = (['intervals', 'claims', 'words', 'evidence'] as const).flatMap((group) => {
    const cells = changes.filter(({ where }) => groupOf(where) === group).length;
    return cells === 0 ? [] : [plural(cells, NOUNS[group].one, NOUNS[group].several)];
  });
  return {
    reasonCode,
    words,
    expected: [...expects],
    changes,
    consequences: [plural(count(', value'), 'value'), plural(count(', place'), 'place'), ...besides, top].join(', '),
  };
}

const NOUNS = {
  intervals: { one: 'interval', several: 'intervals' },
  claims: { one: 'claim', several: 'claims' },
  words: { one: 'statement in words', several: 'statements in words' },
  evidence: { one: 'count of evidence', several: 'counts of evidence' },
} as const;

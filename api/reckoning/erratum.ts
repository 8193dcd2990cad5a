/** What a later revision changed, cell by cell, and what that means for places. Pure. */
import type { EditionDocument } from '../contract/documents/release-documents.js';
import type { InputFault } from '../platform/errors/problem.js';
import { groupOf } from '../contract/cell-groups.js';
import { changesBetween } from './cells.js';
import { partsOf } from './cells-by-division.js';
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

/** The erratum with its changed cells and their consequences, counted; of several divisions for each by name. */
export function computeErratum({ reasonCode, words, expects, before }: Correction, after: RevisionCells): Erratum {
  const told = partsOf(before, after).map((part) => ({ ...part, changes: changesBetween(part.before, part.after) }));
  const named = told
    .filter(({ changes }) => changes.length > 0)
    .map((part) => `${part.division?.name ?? 'whole edition'}: ${consequencesOf(part)}`);
  return {
    reasonCode,
    words,
    expected: [...expects],
    changes: changesBetween(before, after),
    consequences: (after.divisions ? named.join('; ') : told.map(consequencesOf).join('')) || NOTHING,
  };
}

/** What of it is of one division, as that division's own document tells it; null where nothing there changed. */
export function erratumWithin(slug: string, correction: Correction, after: RevisionCells): Erratum | null {
  const part = partsOf(correction.before, after).find(({ division }) => division?.slug === slug);
  if (!part) return null;
  const expects = correction.expects.filter(({ where }) => where in part.before.cells);
  const erratum = computeErratum({ ...correction, expects, before: part.before }, part.after);
  return erratum.changes.length > 0 ? erratum : null;
}

const NOTHING = 'nothing that is published changed';

function consequencesOf({ changes, before, after }: Pick<Erratum, 'changes'> & { before: RevisionCells; after: RevisionCells }): string {
  const count = (ending: string) => changes.filter(({ where }) => where.endsWith(ending)).length;
  const counted = [
    { n: count(', value'), one: 'value' },
    { n: count(', place'), one: 'place' },
    ...(['intervals', 'claims', 'words', 'evidence', 'record', 'documents'] as const)
      .map((group) => ({ n: changes.filter(({ where }) => groupOf(where) === group).length, ...NOUNS[group] }))
      .filter(({ n }) => n > 0),
  ];
  // A revision that is told by its documents too names what changed alone; one of before said of values and places how many, also none.
  const told = before.kinds?.includes('content') ? counted.filter(({ n }) => n > 0) : counted;
  const sentence = told.map(({ n, ...noun }) => plural(n, noun));
  const top = before.top.join() === after.top.join() ? 'top group unchanged' : 'top group changed';
  return [...(sentence.length > 0 ? sentence : [NOTHING]), ...(before.top.length + after.top.length > 0 ? [top] : [])].join(', ');
}

interface Noun {
  readonly one: string;
  readonly several?: string;
}

const plural = (n: number, { one, several = `${one}s` }: Noun): string => `${n} ${n === 1 ? one : several} changed`;

const NOUNS = {
  intervals: { one: 'interval', several: 'intervals' },
  claims: { one: 'claim', several: 'claims' },
  words: { one: 'statement in words', several: 'statements in words' },
  evidence: { one: 'count of evidence', several: 'counts of evidence' },
  record: { one: 'row of the record', several: 'rows of the record' },
  documents: { one: 'document' },
} as const;

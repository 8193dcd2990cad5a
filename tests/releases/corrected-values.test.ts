import type { CategoryDocument, EditionDocument, VariantDocument } from '../../api/contract/documents/release-documents.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import { cellsOf } from '../../api/reckoning/cells.js';
import type { Correction } from '../../api/reckoning/release-inputs.js';
import { inventInputs } from '../support/invent-inputs.js';

const inputs = inventInputs(3);
const documentsOf = <Document>(folder: string, correction: Correction | null) =>
  computeRelease({ ...inputs, correction })
    .filter(({ path }) => path.startsWith(`documents/${folder}`))
    .map(({ content }) => JSON.parse(content) as Document);

const [edition] = documentsOf<EditionDocument>('edition.json', null) as [EditionDocument];
const before = cellsOf({ tables: [{ edition, categories: documentsOf<CategoryDocument>('standings/', null) }] });
const values = Object.keys(before.cells).filter((where) => where.endsWith(', value'));
const [one, other] = values as [string, string];

/** Cells that the histories mark as corrected, where the revision before showed something else in some cells. */
const marked = (shown: Record<string, string>, corrected: string[] = []) =>
  documentsOf<VariantDocument>('variants/', {
    reasonCode: 'methodError',
    words: 'A plate was worn.',
    expects: [],
    before: { ...before, cells: { ...before.cells, ...shown } },
    corrected,
  }).flatMap(({ variant, history }) =>
    history.at(-1)!.categories.flatMap(({ code, isCorrected }) => (isCorrected ? [`${code}, ${variant.slug}, value`] : [])),
  );

test('a history marks the values that an erratum of the edition changed, this one or one before, and no others', () => {
  expect(marked({})).toEqual([]);
  expect(marked({ [one]: 'otherwise' })).toEqual([one]);
  expect(marked({}, [other])).toEqual([other]);
  expect(marked({ [one]: 'otherwise' }, [other]).sort()).toEqual([one, other].sort());
});

test('a place that moved, because others changed, is no corrected value', () => {
  expect(marked({ [one.replace(/value$/, 'place')]: '99' })).toEqual([]);
});

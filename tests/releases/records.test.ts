import { recordsDocumentSchema } from '../../api/contract/documents/release-documents.js';
import type {
  CategoryDocument,
  EditionDocument,
  RecordsDocument,
  VariantDocument,
} from '../../api/contract/documents/release-documents.js';
import { computeRelease } from '../../api/reckoning/compute-release.js';
import type { Bundle } from '../../api/reckoning/documents/bundle.js';
import { retoldOf } from '../../api/reckoning/documents/retold.js';
import type { Retold } from '../../api/reckoning/documents/retold.js';
import { recordsOf } from '../../api/reckoning/longitudinal/records.js';
import { runsOf } from '../../api/reckoning/longitudinal/runs.js';
import type { EarlierEdition } from '../../api/reckoning/release-inputs.js';
import type { SeasonOf } from '../../api/reckoning/longitudinal/seasons.js';
import type { ReleaseContext } from '../../api/reckoning/documents/release-context.js';
import { quantitiesOf } from '../../api/reckoning/results/quantity.js';
import { METHOD_SERIES } from '../support/method-series.js';
import { earlierEdition } from '../support/earlier-edition.js';
import { inventInputs } from '../support/invent-inputs.js';

type Places = Record<string, number | null>;
const season = (edition: string, places: Places, values: Record<string, number> = {}, methodVersion = 1): SeasonOf => ({
  edition,
  places: new Map([
    ['overall', Object.entries(places).map(([variant, place]) => ({ variant, place }))],
    ['stress', Object.keys(values).map((variant) => ({ variant, place: 1 }))],
  ]),
  methodVersions: new Map([['stress', methodVersion]]),
  valueOf: (variant, quantity) => (quantity.startsWith('breakingForce/') ? 80 : values[variant]),
});
const STRESS = {
  quantity: 'apparentStress',
  method: 'straight-pull',
  series: 'untreated',
  section: { method: 'diameter', series: 'outline' },
};
const context = (isComparable: boolean): ReleaseContext =>
  ({
    evidence: {
      edition: {
        slug: '2026',
        scheme: {
          rules: {
            categories: [{ code: 'stress', ...STRESS, unit: 'MPa', places: 0, direction: 'more' }],
          },
        },
      },
    },
    computed: { quantities: quantitiesOf([], [{ slug: 'straight-pull', number: 2, series: METHOD_SERIES['straight-pull'] }]) },
    methods: [1, 2].map((number) => ({ slug: 'straight-pull', number, isComparableWithPrevious: number === 1 || isComparable })),
  }) as unknown as ReleaseContext;

const SEASONS = [season('2024', {}, { a: 900, b: 950.2 }), season('2025', {}, { a: 949.8, b: 930 }), season('2026', {}, { a: 940 }, 2)];

test('the best value ever, by the printed number, and who equalled it', () => {
  expect(recordsOf(context(true), SEASONS)).toEqual([
    {
      category: 'stress',
      strengthFromN: 50,
      strengthBelowN: 100,
      value: '950',
      unit: 'MPa',
      variant: 'b',
      edition: '2024',
      equalled: [{ variant: 'a', edition: '2025' }],
      isNew: false,
      since: '2024',
    },
  ]);
});

test('records begin anew where the method stops comparing', () => {
  expect(recordsOf(context(false), SEASONS)).toMatchObject([{ value: '940', variant: 'a', edition: '2026', isNew: true, since: '2026' }]);
});

test('runs at the top are broken by a season elsewhere, and shared first places each have their own', () => {
  const runs = runsOf([
    season('2023', { a: 1, b: 2 }),
    season('2024', { a: 1, b: 1 }),
    season('2025', { a: 2, b: 1 }),
    season('2026', { a: 1, b: 2 }),
  ]);
  expect(runs.filter(({ table }) => table === 'overall')).toEqual([
    { table: 'overall', variant: 'a', editions: ['2023', '2024'], isGoingOn: false },
    { table: 'overall', variant: 'b', editions: ['2024', '2025'], isGoingOn: false },
    { table: 'overall', variant: 'a', editions: ['2026'], isGoingOn: true },
  ]);
});

test('a release tells records and runs over the editions before, as their bundles have them', () => {
  const first = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 5 });
  // What it found of rigs is left out, so that the same readings give the same values.
  const { spreads: _, ...earlier } = earlierEdition(computeRelease(first), 'd');
  const second = {
    ...first,
    evidence: { ...first.evidence, edition: { ...first.evidence.edition, slug: '2027', previous: '2026' } },
    earlier: [earlier],
  };
  const file = computeRelease(second).find(({ path }) => path === 'documents/records.json')!;
  const document: RecordsDocument = recordsDocumentSchema.parse(JSON.parse(file.content));
  // The same readings twice: each record is set in the first edition and equalled in the second.
  for (const { edition, variant, equalled } of document.records)
    expect([edition, equalled]).toEqual(['2026', [{ variant, edition: '2027' }]]);
  expect(document.records.length).toBeGreaterThan(2);
  const top = earlier.overall.find(({ place }) => place === 1)!.variant;
  expect(document.runs).toContainEqual({ table: 'overall', variant: top, editions: ['2026', '2027'], isGoingOn: true });
});

test('a release says itself what later ones tell again of it: what its bundle and its pages say', () => {
  const files = computeRelease(inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 5 }));
  const read = (name: string): unknown => JSON.parse(files.find(({ path }) => path === name)!.content);
  const pages = files.filter(({ path }) => path.startsWith('documents/variants/')).map(({ path }) => read(path) as VariantDocument);
  const told = retoldOf((read('bundle.json') as Bundle).outputs, pages);
  const { spreads, ...retold } = read('retold.json') as Retold;
  expect(retold).toEqual(JSON.parse(JSON.stringify(told)));
  expect(Object.keys(spreads!)).toContain('breakingForce/straight-pull/untreated');
  expect([told.history.length, told.previousEdition]).toEqual([4, null]);
});

test('what an edition found of rigs, testers and spools sharpens the three that follow', () => {
  const first = inventInputs(5, { variants: 8, testers: 3, rigs: 2, specimens: 5 });
  const files = computeRelease(first);
  const next = { ...first, evidence: { ...first.evidence, edition: { ...first.evidence.edition, slug: '2027', previous: '2026' } } };
  const intervals = (earlier: EarlierEdition): string => {
    const all = computeRelease({ ...next, earlier: [earlier] });
    const { rows } = JSON.parse(all.find(({ path }) => path === 'documents/standings/stress.json')!.content) as CategoryDocument;
    return JSON.stringify(rows.map(({ figure }) => figure));
  };
  const newest = earlierEdition(files, 'd');
  const { spreads: _, ...silent } = newest;
  expect(intervals(newest)).not.toBe(intervals(silent));
  expect(earlierEdition(files, 'c', 2).spreads).toEqual(newest.spreads);
  expect(earlierEdition(files, 'c', 3).spreads).toBeUndefined();
});

test('of an edition before the one before, a release tells the same without how sure its results were', () => {
  const first = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 5 });
  const files = computeRelease(first);
  const newest = { ...earlierEdition(files, 'd'), edition: '2027' };
  const inputs = { ...first, evidence: { ...first.evidence, edition: { ...first.evidence.edition, slug: '2028', previous: '2027' } } };
  const documentsBeside = (oldest: EarlierEdition) =>
    computeRelease({ ...inputs, earlier: [newest, oldest] }).filter(({ path }) => path !== 'bundle.json');
  const [whole, small] = [earlierEdition(files, 'c'), earlierEdition(files, 'c', 1)];
  expect(JSON.stringify(small).length).toBeLessThan(JSON.stringify(whole).length);
  expect(documentsBeside(small)).toEqual(documentsBeside(whole));
});

test('a category that ranks another quantity than the edition before does not compare, though its name is the same', () => {
  const first = inventInputs(5, { variants: 4, testers: 3, rigs: 2, specimens: 5 });
  const before = earlierEdition(computeRelease(first), 'd');
  const comparabilities = (earlier: typeof before) => {
    const files = computeRelease({ ...first, earlier: [earlier] });
    const { scheme } = JSON.parse(files.find(({ path }) => path === 'documents/edition.json')!.content) as EditionDocument;
    return scheme.categories.map(({ code, comparability }) => [code, comparability]);
  };
  expect(comparabilities(before)).toEqual(['stress', 'knot', 'abrasion'].map((code) => [code, 'same']));
  const other = before.categories.map((one) => (one.code === 'knot' ? { ...one, quantity: 'retention/fg-knot/knotted' } : one));
  expect(comparabilities({ ...before, categories: other })).toContainEqual(['knot', 'notComparable']);
});

import type { Release } from '../../site/src/release/load-release.js';
import { whyNotOf } from '../../site/src/release/why-not.js';
import { besideIn } from '../../site/src/weigh/one-beside-another.js';
import { fitsOf, leadOf, reasonsOf, type Wish } from '../../site/src/words/find-words.js';
import type { FindIndex, FindLine, FindRow } from '../../site/src/release/find-index.js';

const row = (place: number, group: number, next: FindRow['next'] = null): FindRow => ({
  place,
  group,
  couldBeFirst: group === 1,
  value: '900',
  low: '880',
  high: '920',
  next,
});
const line = (slug: string, rows: (FindRow | null)[], own: Partial<FindLine> = {}): FindLine => ({
  slug,
  name: slug.toUpperCase(),
  href: `/variants/${slug}/`,
  make: 'braided UHMWPE',
  diameterMm: '0.20',
  forceN: '90',
  pe: '1.0',
  isRemarked: false,
  isObtainable: true,
  rows,
  ...own,
});
const table = (code: string, direction: 'more' | 'less' = 'more') => ({
  code,
  name: code,
  unit: code === 'overall' ? null : 'MPa',
  direction,
  href: `/${code}/`,
  placed: 4,
});
const index: FindIndex = {
  division: '',
  name: 'Winter',
  tables: [table('overall'), table('stress')],
  lines: [
    line('a', [row(1, 1), row(1, 1, { slug: 'b', aheadPercent: '62.4' })]),
    line('b', [row(2, 1), row(2, 1, { slug: 'c', aheadPercent: '99.9' })], { diameterMm: '0.30', isObtainable: false }),
    line('c', [row(3, 2), row(3, 2)], { make: 'monofilament nylon', forceN: null }),
    line('d', [null, row(3, 2)], { pe: null }),
  ],
  pairs: {
    variants: ['a', 'b', 'c'],
    aheadPercent: [
      [50, 71, 100],
      [29, 50, 97],
      [0, 3, 50],
    ],
  },
};
const none = { from: null, to: null };
const wish: Wish = { make: '', pe: '', peTo: '', about: null, diameter: none, force: none, isObtainable: false, by: 'stress' };
const names = (own: Partial<Wish>) => fitsOf(index, { ...wish, ...own }).map((fit) => fit.line.slug);
const lead = (own: Partial<Wish>) => leadOf(index, index.tables[own.by === 'overall' ? 0 : 1]!, fitsOf(index, { ...wish, ...own }));

test('what fits stands in the published order of the table that matters; what was not measured fits no range', () => {
  expect(names({})).toEqual(['a', 'b', 'c', 'd']);
  expect(names({ by: 'overall' })).toEqual(['a', 'b', 'c']);
  expect(names({ make: 'monofilament nylon' })).toEqual(['c']);
  expect(names({ diameter: { from: null, to: 0.25 } })).toEqual(['a', 'c', 'd']);
  expect(names({ force: { from: 50, to: null } })).toEqual(['a', 'b', 'd']);
  expect(names({ isObtainable: true })).toEqual(['a', 'c', 'd']);
  expect(names({ pe: '1.0' })).toEqual(['a', 'b', 'c']);
  // From one number to another, or up to one.
  expect(names({ pe: '0.8', peTo: '1.0' })).toEqual(['a', 'b', 'c']);
  expect(names({ peTo: '0.8' })).toEqual([]);
  expect(names({ pe: '0.8' })).toEqual([]);
});

test('whether the first is ahead is told by the published chance of the two, else by their published intervals, else by groups', () => {
  expect(lead({})).toBe('A stands first of the 4 that fit; too close to call: the chance that it is ahead of B is 62 %.');
  expect(lead({ by: 'overall' })).toBe('A stands first of the 3 that fit; too close to call: the chance that it is ahead of B is 71 %.');
  // Not neighbours in the table: of 900 (880 to 920) and 880 (860 to 900) 20 is the difference and 28.3 what its interval reaches, so that
  // 1.386 standard deviations lie between them (Zou and Donner 2008): 91.7 % of a normal distribution lie below.
  const apart = (direction: 'more' | 'less', [one, other]: [Partial<FindRow>, Partial<FindRow>]) => {
    const [a, , c] = fitsOf(index, wish);
    return leadOf(index, table('stress', direction), [
      { ...a!, row: { ...a!.row, ...one } },
      { ...c!, row: { ...c!.row, ...other } },
    ]);
  };
  const [more, fewer] = [
    { value: '900', low: '880', high: '920' },
    { value: '880', low: '860', high: '900' },
  ];
  expect(apart('more', [more, fewer])).toContain('; too close to call: the chance that it is ahead of C is 92 %.');
  expect(apart('less', [fewer, more])).toContain('; too close to call: the chance that it is ahead of C is 92 %.');
  expect(apart('more', [more, { ...fewer, low: null, high: null }])).toBe(
    'A stands first of the 2 that fit; the evidence tells it from C, over the whole table at once.',
  );
  expect(leadOf(index, index.tables[1]!, fitsOf(index, wish).slice(1, 3))).toBe(
    'B stands first of the 2 that fit, ahead of C with more than 99 %.',
  );
  expect(leadOf(index, index.tables[1]!, fitsOf(index, wish).slice(2))).toBe('C stands first of the 2 that fit, level with D.');
  expect(lead({ make: 'monofilament nylon' })).toBe('C is the only one of 4 that fits.');
  expect(lead({ make: 'wire' })).toBe('Nothing fits. Widen a range, or take a wish back.');
});

test('the reasons say place, size and what can no longer be bought', () => {
  const [a, b] = fitsOf(index, wish);
  expect(reasonsOf(a!, index.tables[1]!).map(({ text }) => text)).toEqual([
    'place 1 of 4; could be first; 0.20 mm; 90 N',
    'place 1 of 4; could be first; 0.008 in; 20.2 lbf',
    'place 1 of 4; could be first; 0.20 mm; 9.2 kgf',
  ]);
  expect(reasonsOf(b!, index.tables[1]!)[0]?.text).toContain('cannot be bought any more');
});

test('a difference has its sign, and none where it rounds to nothing', () => {
  const row = (value: string, low: string, high: string) => ({ value, low, high, place: null, group: null, trade: null, next: null });
  const variant = (slug: string, one: ReturnType<typeof row>) => ({
    slug,
    name: slug,
    href: null,
    overall: { place: null, placeInterval: null, group: null },
    categories: [one],
  });
  const category = { name: 'Knot retention', direction: 'more', unit: '%', tradeUnit: null, href: '' } as const;
  const tables = { name: '', categories: [category], variants: [], pairs: { variants: [], aheadPercent: [] }, remarks: [] };
  const [one, other] = [variant('a', row('90.1', '86.0', '94.1')), variant('b', row('83.8', '79.0', '88.6'))];
  // By hand from the formula: 6.3 − √(4.1² + 4.8²) = −0.01, 6.3 + √(4.0² + 4.8²) = 12.55.
  expect(besideIn(tables, 0, one, other)?.difference).toEqual({ value: '+6.3', interval: '0.0 to +12.5' });
  expect(besideIn(tables, 0, other, one)?.difference).toEqual({ value: '\u22126.3', interval: '\u221212.5 to 0.0' });
});

test('a withdrawn result is told under the name of its variant, with why and with what brings one back', async () => {
  const maker = { slug: 'quay', name: 'Quay' };
  const variant = { slug: 'a', maker, line: { slug: 'brine', name: 'Brine' }, size: 'PE 1.0', colour: 'grey' };
  const edition = { division: null, scheme: { categories: [] }, overall: [{ variant }], incomplete: [], excluded: [] };
  const item = { reference: 'S-1', variant: 'a', reason: 'The gauge stood in pounds.' };
  const release = {
    address: '/v1/releases/x/1/',
    variants: [],
    tables: () => Promise.resolve([{ edition: () => Promise.resolve(edition) }]),
    withdrawn: () => Promise.resolve({ items: [item] }),
  } as unknown as Release;
  expect(await whyNotOf(release)).toEqual([
    {
      slug: 'a',
      name: 'Quay Brine, PE 1.0, grey',
      what: 'a result was withdrawn',
      words: 'S-1: The gauge stood in pounds. A new submission on the spool, accepted by a second person, brings a result back.',
      at: 'withdrawn',
    },
  ]);
});

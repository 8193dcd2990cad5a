import { apartAlone } from '../../site/src/words/apart-words.js';
import type { CategoryDocument, OverallRow, VariantName } from '../../api/contract/documents/release-documents.js';
import { entriesSentence, valuesSentence } from '../../site/src/words/change-sentences.js';
import { chanceWords } from '../../site/src/words/chance-words.js';
import { lastingAddress } from '../../site/src/release/lasting-address.js';
import { differenceOf } from '../../site/src/weigh/difference.js';
import { inUnits, textsInUnits } from '../../site/src/words/in-units.js';
import { isWord, term, tokens } from '../../site/src/words/search-terms.js';
import { setWords } from '../../site/src/words/lead-words.js';
import { isRuled, markWords } from '../../site/src/words/marks.js';
import { strengthClass, strengthClassWords } from '../../site/src/words/strength-class.js';
import { bringsBackWords, exclusionWords, needsWords } from '../../site/src/words/exclusion-words.js';
import { couldBeFirstWords } from '../../site/src/words/could-be-first-words.js';
import { decisionWords } from '../../site/src/words/claim-words.js';
import { placesAllowed } from '../../site/src/words/group-words.js';
import { counted } from '../../site/src/words/counted.js';
import { changedCell } from '../../site/src/words/changed-cell.js';
import { movedMost, movedMostWords } from '../../site/src/words/moved-most.js';
import { changeWords, movementWords } from '../../site/src/words/movement-words.js';
import { nameOf } from '../../site/src/words/quantity-words.js';
import { whereWords } from '../../site/src/words/where-words.js';
import { seriesWords } from '../../site/src/words/series-words.js';
import { mostPlaces, padToPoint } from '../../site/src/words/pad-to-point.js';
import { withinSentence } from '../../site/src/words/locale.js';
import { nearest, nearestOfLine } from '../../site/src/words/nearest.js';
import type { Mapped } from '../../site/src/release/mapped.js';

test('blanks bring the decimal points of a column under each other and leave the value as published', () => {
  const column = ['1248', '69.6', '0.245'];
  const places = mostPlaces(column);
  expect(places).toBe(3);
  // A figure space is as wide as a digit, a punctuation space as a point (Unicode, General Punctuation).
  expect(column.map((value) => padToPoint(value, places))).toEqual(['\u2008\u2007\u2007\u2007', '\u2007\u2007', '']);
});

const rows = [
  { place: 1, group: 1, couldBeFirst: true },
  { place: 2, group: 1, couldBeFirst: true },
  { place: 3, group: 2, couldBeFirst: false },
  { place: null, group: null, couldBeFirst: false },
];

test('a thin rule stands where the set of those that could be first ends, and below the last place; nowhere else', () => {
  expect(rows.map((_, index) => isRuled(rows, index))).toEqual([false, false, true, true]);
  // One without a place among them parts nothing.
  const between = rows.toSpliced(1, 0, rows[3]!);
  expect(between.map((_, index) => isRuled(between, index))).toEqual([false, false, false, true, true]);
  expect(rows.map(markWords)).toEqual(['could be first, group 1', 'could be first, group 1', 'group 2', 'not placed']);
});

test('who could be first is said with a number, and not at all where a release does not tell it', () => {
  expect(setWords(rows)).toBe('the best is one of 2 (95 %)');
  expect(setWords(rows.slice(1))).toBe('no other could be the best (95 %)');
  expect(setWords([{ place: 1, group: 1 }])).toBe('');
  expect(
    setWords([
      { place: 1, group: 1, couldBeFirst: true },
      { place: null, group: null, couldBeFirst: true },
    ]),
  ).toBe('no other could be the best (95 %)');
});

test('rated strengths fall into classes in newtons, the lower end within', () => {
  expect(['24.9', '25', '92.4', '1200', null].map(strengthClass)).toEqual(['0', '25', '75', '1000', null]);
  expect(strengthClassWords('75')).toBe('75 to 100 N');
  expect(strengthClassWords('1000')).toBe('1000 N and more');
});

const variant = (line: string) => ({ line: { slug: 'x', name: line }, size: 'PE 1.0' }) as VariantName;
const changed = (line: string, percent: string, kind = 'changed') => ({ variant: variant(line), change: { kind, percent } });

test('what changed is told largest first, what moved within noise is counted and not named', () => {
  const document = {
    category: { name: 'Knot' },
    rows: [changed('A', '2.0'), changed('B', '-9.1'), changed('C', '1.0', 'withinNoise'), changed('D', '3.0'), changed('E', '4.0')],
  };
  expect(valuesSentence([document as CategoryDocument])).toBe(
    '4 of 5 values changed beyond noise: B PE 1.0 (knot −9.1 %), E PE 1.0 (knot +4.0 %), D PE 1.0 (knot +3.0 %) and 1 more.',
  );
});

test('who is new and who is gone is named, and that nobody is', () => {
  const overall = [{ variant: variant('A'), movement: { kind: 'new' } }] as OverallRow[];
  expect(entriesSentence({ overall }, [variant('B'), variant('C')])).toBe('1 is new (A PE 1.0); 2 are gone (B PE 1.0, C PE 1.0).');
  expect(entriesSentence({ overall: [] }, [])).toBe('The same variants were tested.');
});

test('an interval that is not stated is said, never made up', () => {
  expect(placesAllowed(null)).toBe('not stated');
  expect(placesAllowed({ low: 2, high: 7 })).toBe('2 to 7');
  expect(placesAllowed({ low: 3, high: 3 })).toBe('3');
});

test('movement is told in words, with the run at the top from the second edition on', () => {
  expect(movementWords({ kind: 'moved', places: -2, runAtTop: 0 })).toBe('down 2');
  expect(movementWords({ kind: 'moved', places: 3, runAtTop: 1 })).toBe('up 3');
  expect(movementWords({ kind: 'unchanged', places: 0, runAtTop: 3 })).toBe('same place, first 3 editions in a row');
});

test('a change within noise shows no percentage, so that none is read into it', () => {
  expect(changeWords({ kind: 'withinNoise', percent: '1.2' })).toBe('within noise');
  expect(changeWords({ kind: 'notComparable', percent: null })).toBe('not comparable');
  expect(changeWords({ kind: 'changed', percent: '4.0' })).toBe('+4.0 %');
  expect(changeWords({ kind: 'changed', percent: '-4.0' })).toBe('−4.0 %');
});

test.each([
  ['breakingForce', 'fallsShort', 'falls short'],
  ['diameter', 'fallsShort', 'thicker than claimed'],
  ['diameter', 'probablyFallsShort', 'probably thicker than claimed'],
  ['linearDensity', 'fallsShort', 'differs from the claim'],
  ['diameter', 'meets', 'meets'],
  ['peNumber', null, 'not decided'],
] as const)('a claim of %s with the decision %s is told as "%s"', (quantity, decision, words) => {
  expect(decisionWords({ quantity, decision })).toBe(words);
});

test('a quantity is called what its release calls it; the first releases had fixed names', () => {
  expect(nameOf({ quantity: 'retention/fg-knot/knotted', name: 'Knot retention, FG' })).toBe('Knot retention, FG');
  expect(nameOf({ quantity: 'knotRetention' })).toBe('Knot retention');
});

test('what a method yields is told in words', () => {
  const treatment = { kind: 'knot', name: 'FG', words: '20 crossed turns' } as const;
  expect(seriesWords({ code: 'knotted', kind: 'breakingForce', treatment })).toBe('Breaking force, knotted (FG):');
  expect(seriesWords({ code: 'untreated', kind: 'breakingForce', treatment: null })).toBe('Breaking force, untreated.');
  expect(seriesWords({ code: 'outline', kind: 'diameterAlongStations', stations: 3 })).toMatch(/at 3 stations/);
  expect(seriesWords({ code: 'mass', kind: 'linearDensity' })).toBe('Mass and length of pieces.');
});

test('a chance that rounds to certainty is not called certain', () => {
  expect([0, 1, 99, 100, undefined].map(chanceWords)).toEqual(['<1 %', '1 %', '99 %', '>99 %', 'not stated']);
});

test('a decimal number is one word of a search, the same with and without its last zero, and no beginning of another', () => {
  expect(tokens('PE 1.0, 0.20').map(term)).toEqual(['pe', '1', '0.2']);
  expect(['0.20', '20', '20lb', 'lb'].map(isWord)).toEqual([false, false, false, true]);
  // A comma between digits is a point, as most of Europe types it.
  expect(tokens('0,20 mm, white').map(term)).toEqual(['0.2', '0.2mm', 'white']);
  // A figure is one word with its unit, however that is written: place 20 is not 20 lb.
  for (const said of ['20 lb', '20lb', '20 lbs', '20.0 lbf']) expect(tokens(said).map(term)).toEqual(['20', '20lb']);
  expect(tokens('9 kgf, 4 Nylon').map(term)).toEqual(['9', '9kg', '4', 'nylon']);
});

test('a table says who could be the best, of those that are placed', () => {
  const row = (couldBeFirst: boolean | null, place: number | null = 1) => ({ place, couldBeFirst });
  expect(couldBeFirstWords([row(true), row(true), row(false), row(true, null)])).toBe(
    'The best of this table is one of 2 variants of 3, with 95 % confidence.',
  );
  expect(couldBeFirstWords([row(true), row(false)])).toContain('the one in first place');
  expect(couldBeFirstWords([row(true), row(true)])).toContain('rules out none');
  expect(couldBeFirstWords([row(null), { place: 1 }])).toBeNull();
});

test('every reason to leave a variant out says what would bring it back', () => {
  expect(Object.keys(bringsBackWords)).toEqual(Object.keys(exclusionWords));
  for (const words of Object.values(bringsBackWords)) expect(words).toMatch(/^It comes back when .+\.$/);
});

test('what an incomplete entry lacks is told category by category, each by its name', () => {
  const names = new Map([['knot', 'Knot retention, FG']]);
  const needs = ['one rig in knot', 'two testers in knot', 'how readings scatter in knot: nothing tells it', 'one tester in mass'];
  expect(needsWords(needs, names)).toBe(
    'one rig, two testers in knot retention (FG); how readings scatter in knot retention (FG): nothing tells it; one tester in mass',
  );
});

test('of many changed cells those are told that moved most: places by number, values with their unit by share, intervals not at all', () => {
  const change = (where: string, before: string | null, after: string | null) => ({ where, before, after });
  const places = [change('overall, a, place', '2', '1'), change('overall, b, place', '3', '9'), change('overall, c, place', null, '4')];
  expect(movedMost(places, 2).map(({ where }) => where)).toEqual(['overall, b, place', 'overall, a, place']);
  const values = [
    change('stress, a, value', '2546 MPa', '2547 MPa'),
    change('knot, b, value', '70.0 %', '77.0 %'),
    change('stress, a, interval', '2500 to 2600', '2100 to 2600'),
  ];
  expect(movedMost(values, 3).map(({ where }) => where)).toEqual(['knot, b, value', 'stress, a, value']);
  const names = new Map([
    ['a', 'Gannet 8, PE 1.0'],
    ['b', 'Skua'],
    ['knot', 'Knot retention'],
    ['overall', 'Overall'],
  ]);
  // A variant is named once, whatever moved of it.
  expect(movedMostWords([...places, change('knot, b, place', '8', '3')], 3, names)).toBe(
    'Skua: Overall, place from 3 to 9; Knot retention, place from 8 to 3. Gannet 8, PE 1.0: Overall, place from 2 to 1',
  );
});

test('what an erratum changed reads as elsewhere: decisions in words, digests by their beginning', () => {
  expect(changedCell('label, a, breakingForce', '8.4 kgf, 80.6 %, fallsShort')).toBe('8.4 kgf, 80.6 %, falls short');
  expect(changedCell('label, a, diameter', '0.2 mm, 120 %, probablyFallsShort')).toBe('0.2 mm, 120 %, probably thicker than claimed');
  expect(changedCell('documents/claims.json, content', 'bd4ff0eea8d0'.padEnd(64, '0'))).toBe('bd4ff0ee…');
  expect(changedCell('reply, a, words', 'Sealed. (L. Farrant, 2025-04-17)')).toBe('Sealed. (L. Farrant, 17 April 2025)');
  expect(changedCell('stress, a, value', '2546 MPa')).toBe('2546 MPa');
});

test('where a cell stands is told in names; what has none stays', () => {
  const names = new Map([
    ['stress', 'Apparent stress'],
    ['coldharl-8', 'Coldharl 8'],
  ]);
  expect(whereWords('stress, coldharl-8, place', names)).toBe('Apparent stress, Coldharl 8, place');
});

test('a pair that stands as 100 and 1, each way rounded by itself, is told in both of its rows', () => {
  const rows = ['one', 'other', 'third'].map((slug, index) => ({ variant: { slug }, place: index + 1, group: 1, couldBeFirst: null }));
  const aheadPercent = [
    [50, 100, 60],
    [1, 50, 60],
    [40, 40, 50],
  ];
  expect(apartAlone(rows, { variants: ['one', 'other', 'third'], aheadPercent })).toEqual(
    new Map([
      ['one', 1],
      ['other', 1],
    ]),
  );
});

test('the interval of a difference is recovered from two intervals, as Newcombe and Zou and Donner do', () => {
  // Newcombe, Statistics in Medicine 17 (1998), 873, contrast (a) by method 10, from memory: 56/70 less 48/80 is 0.20 (0.0524 to 0.3339).
  const wilson = (hits: number, of: number) => {
    const [z, p] = [1.959964, hits / of];
    const [middle, half] = [p + z ** 2 / (2 * of), z * Math.sqrt((p * (1 - p)) / of + z ** 2 / (4 * of ** 2))];
    return { value: p, low: (middle - half) / (1 + z ** 2 / of), high: (middle + half) / (1 + z ** 2 / of) };
  };
  const { value, low, high, chance } = differenceOf(wilson(56, 70), wilson(48, 80));
  expect([value, low, high].map((one) => one.toFixed(4))).toEqual(['0.2000', '0.0524', '0.3339']);
  expect(chance).toBeGreaterThan(0.975);
  expect(differenceOf({ value: 3, low: 2, high: 4 }, { value: 3, low: 1, high: 4 }).chance).toBe(0.5);
  expect(differenceOf({ value: 2, low: 2, high: 2 }, { value: 3, low: 3, high: 3 }).chance).toBe(0);
  const [one, other] = [wilson(56, 70), wilson(48, 80)];
  expect(differenceOf(other, one).chance).toBeCloseTo(1 - differenceOf(one, other).chance, 12);
});

test('a citation names the address at which a page stays when another revision follows', () => {
  const release = { edition: '2026', revision: 2 };
  expect(lastingAddress(release, '/editions/2026/braided/stress/')).toBe('/editions/2026/revisions/2/braided/stress/');
  expect(lastingAddress(release, '/editions/2026/revisions/2/labels/')).toBe('/editions/2026/revisions/2/labels/');
  expect(lastingAddress(release, '/variants/a-1/')).toBe('/editions/2026/revisions/2/variants/a-1/');
  expect(lastingAddress(release, '/')).toBe('/editions/2026/revisions/2/');
});

test('a figure reads in pounds, inches, psi and kilograms-force by the exact factors, and a label as it is printed', () => {
  const texts = (value: string, unit: string) => textsInUnits(value, unit).map(({ system, text }) => [system, text]);
  // NIST SP 811 (2008), appendix B.8: 1 lbf = 4.448 222 N, 1 kgf = 9.806 65 N, 1 psi = 6.894 757 kPa, 1 in = 25.4 mm.
  expect(texts('444.8222', 'N')).toEqual([
    ['si', '444.8222 N'],
    ['trade', '100.0000 lbf'],
    ['kgf', '45.3592 kgf'],
  ]);
  expect(texts('98.1', 'N')[2]).toEqual(['kgf', '10.00 kgf']);
  expect(texts('0.254', 'mm')[1]).toEqual(['trade', '0.0100 in']);
  expect(texts('6894.757', 'MPa')[1]).toEqual(['trade', '1000000.0 psi']);
  expect(texts('63.4', '%')).toEqual([['si', '63.4 %']]);
  // 20 lb on a label stay 20, whatever their newtons round to.
  const label = { value: '89.0', low: null, high: null, unit: 'N', printed: { text: '20', unit: 'lbf' } };
  expect(inUnits(label).map(({ unit, value }) => `${value} ${unit}`)).toEqual(['89.0 N', '20 lbf', '9.08 kgf']);
  // Half a width of 9.9 N is 1.0 kgf: two digits of it, not three.
  const wide = { value: '512.3', low: '502.4', high: '522.2', unit: 'N' };
  expect(inUnits(wide).find(({ system }) => system === 'kgf')).toMatchObject({ value: '52.2', low: '51.2', high: '53.2' });
});

test('one is one, and none are many', () => {
  expect([0, 1, 2].map((count) => counted(count, 'rig', 'rigs'))).toEqual(['0 rigs', '1 rig', '2 rigs']);
});

test('a name within a sentence begins small, and its abbreviations stay', () => {
  expect(['Knot retention, FG', 'Apparent breaking stress', 'PE number'].map(withinSentence)).toEqual([
    'knot retention, FG',
    'apparent breaking stress',
    'PE number',
  ]);
});

test('of a line in very many sizes a page names the twelve that are nearest to its own, in their order; of another line three', () => {
  const sizes = Array.from({ length: 40 }, (_, i) => ({ slug: `tern-${i}`, line: { slug: i < 35 ? 'tern' : 'knot' } }));
  const lines = sizes.map(
    (variant, i) => ({ slug: variant.slug, variant, force: { value: 100 + i }, diameter: { value: 0.2 } }) as unknown as Mapped,
  );
  const others = sizes.filter(({ slug, line }) => line.slug === 'tern' && slug !== 'tern-20');
  const slugs = (some: readonly { readonly slug: string }[]) => some.map(({ slug }) => Number(slug.slice(5)));
  expect(slugs(nearestOfLine(others, lines, 'tern-20'))).toEqual([14, 15, 16, 17, 18, 19, 21, 22, 23, 24, 25, 26]);
  expect(nearestOfLine(others.slice(0, 12), lines, 'tern-20')).toHaveLength(12);
  // Nobody measured the own, or any.
  expect(slugs(nearestOfLine(others, [], 'tern-20'))).toEqual([...Array(12).keys()]);
  expect(slugs(nearest(lines, 'tern-20'))).toEqual([35, 36, 37]);
});

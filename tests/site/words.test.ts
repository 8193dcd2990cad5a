import { couldBeFirstWords } from '../../site/src/words/could-be-first-words.js';
import { byGroup } from '../../site/src/words/by-group.js';
import { decisionWords } from '../../site/src/words/claim-words.js';
import { groupWords, placesAllowed } from '../../site/src/words/group-words.js';
import { changeWords, movementWords } from '../../site/src/words/movement-words.js';
import { nameOf } from '../../site/src/words/quantity-words.js';
import { seriesWords } from '../../site/src/words/series-words.js';
import { mostPlaces, padToPoint } from '../../site/src/words/pad-to-point.js';

test('blanks bring the decimal points of a column under each other and leave the value as published', () => {
  const column = ['1248', '69.6', '0.245'];
  const places = mostPlaces(column);
  expect(places).toBe(3);
  // A figure space is as wide as a digit, a punctuation space as a point (Unicode, General Punctuation).
  expect(column.map((value) => padToPoint(value, places))).toEqual(['\u2008\u2007\u2007\u2007', '\u2007\u2007', '']);
});

test('rows are cut where the group changes, and stay in published order', () => {
  const rows = [
    { group: 1, slug: 'a' },
    { group: 1, slug: 'b' },
    { group: 2, slug: 'c' },
    { group: null, slug: 'd' },
  ];
  expect(byGroup(rows).map(({ group, rows: members }) => [group, members.map(({ slug }) => slug).join('')])).toEqual([
    [1, 'ab'],
    [2, 'c'],
    [null, 'd'],
  ]);
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
  expect(changeWords({ kind: 'changed', percent: '-4.0' })).toBe('-4.0 %');
});

test('a group whose rows others stand between says how many it has in all, and is continued by its name', () => {
  const runs = byGroup([{ group: 1 }, { group: 2 }, { group: 1 }, { group: 1 }]);
  expect(runs.map(({ group, count, isContinued }) => [group, count, isContinued])).toEqual([
    [1, 3, false],
    [2, 1, false],
    [1, 3, true],
  ]);
  expect(groupWords(1, 3)).toEqual({ name: 'Top group', says: '3 variants, too close to call among themselves' });
  expect(groupWords(1, 3, true)).toEqual({ name: 'Top group, continued', says: 'of 3 variants in all' });
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
  expect(seriesWords({ code: 'knotted', kind: 'breakingForce', treatment })).toBe('Breaking force, knotted (FG): 20 crossed turns.');
  expect(seriesWords({ code: 'untreated', kind: 'breakingForce', treatment: null })).toBe('Breaking force, untreated.');
  expect(seriesWords({ code: 'outline', kind: 'diameterAlongStations', stations: 3 })).toMatch(/at 3 stations/);
  expect(seriesWords({ code: 'mass', kind: 'linearDensity' })).toBe('Mass and length of pieces.');
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

import { readFileSync } from 'node:fs';
import { competitionPlaces } from '../../../api/measurement/ranking/places/competition-places.js';
import { movement } from '../../../api/measurement/ranking/movement/movement.js';
import { overallScores } from '../../../api/measurement/ranking/places/overall-scores.js';
import { computeStandings } from '../../../api/measurement/ranking/places/standings.js';
import type { StandingsEntry, StandingsInput } from '../../../api/measurement/ranking/places/standings.js';

interface Case {
  id: string;
  source: string;
  inputs: { values: number[] };
  expected: { min?: number[]; competition?: number[] };
}
const cases = JSON.parse(readFileSync('tests/measurement/fixtures/ranking.json', 'utf8')) as Case[];
const published = (id: string) => cases.find((entry) => entry.id === id)!;

test('K01 scipy.stats.rankdata "min": less is better', () => {
  const { inputs, expected } = published('K01-rankdata');
  expect(competitionPlaces(inputs.values.map(String), 'less')).toEqual(expected.min);
});

test('K02 definition of competition ranks: more is better', () => {
  const { inputs, expected } = published('K02-descending-ties');
  expect(competitionPlaces(inputs.values.map(String), 'more')).toEqual(expected.competition);
});

test('decimals tie by value, not by text, and what is no decimal is refused', () => {
  expect(competitionPlaces(['8.50', '8.5', '9'], 'more')).toEqual([2, 2, 1]);
  expect(() => competitionPlaces(['NaN'], 'more')).toThrow('expected a decimal');
  expect(competitionPlaces([], 'more')).toEqual([]);
});

const entry = (id: string, a: string | null, b: string | null, exclusion: StandingsEntry['exclusion'] = null): StandingsEntry => ({
  id,
  values: { a, b },
  exclusion,
});
const input = (entries: StandingsEntry[], rules: Partial<StandingsInput> = {}): StandingsInput => ({
  categories: [
    { code: 'a', direction: 'more', weight: '1' },
    { code: 'b', direction: 'less', weight: '1' },
  ],
  combine: 'sumOfPlaces',
  countPlaces: 'afterExclusions',
  tieBreak: 'none',
  entries,
  ...rules,
});
const overall = (standings: ReturnType<typeof computeStandings>) => standings.overall.map(({ id, place, score }) => [id, place, score]);

const four = [entry('w', '40', '1'), entry('x', '30', '2'), entry('y', '20', '3'), entry('z', '10', '4')];

test('in a category that is unplaced values stand by name and nobody has a place; the score is that of the others', () => {
  const [a, b] = input(four).categories;
  const unplaced = { ...b!, isUnplaced: true };
  const found = computeStandings(input([...four, entry('v', '50', null)], { categories: [a!, unplaced] }));
  const { categories } = found;
  expect(categories['b']!.map(({ id, value, place }) => [id, value, place])).toEqual(four.map(({ id, values }) => [id, values['b'], null]));
  expect(categories['a']!.map(({ id, place }) => [id, place])).toEqual(['v', 'w', 'x', 'y', 'z'].map((id, at) => [id, at + 1]));
  expect(overall(found)).toEqual(categories['a']!.map(({ id, place }) => [id, place, String(place)]));
  expect(found.overall[0]!.categoryPlaces).toEqual({ a: 1 });
  expect(found.incomplete).toEqual([]);
  // Where no category has places nobody has one overall.
  const none = computeStandings(input(four, { categories: [{ ...a!, isUnplaced: true }, unplaced] }));
  expect(none.overall).toEqual([]);
  expect(none.incomplete).toEqual(four.map(({ id }) => ({ id, missing: ['a', 'b'] })));
});

test('the score is the sum of places, lowest first; ties stay ties', () => {
  expect(overall(computeStandings(input(four)))).toEqual([
    ['w', 1, '2'],
    ['x', 2, '4'],
    ['y', 3, '6'],
    ['z', 4, '8'],
  ]);
  const tied = computeStandings(input([entry('p', '2', '9'), entry('q', '1', '8'), entry('r', '0', '10')]));
  expect(overall(tied)).toEqual([
    ['p', 1, '3'],
    ['q', 1, '3'],
    ['r', 3, '6'],
  ]);
});

test('the tie-break of the scheme: most first places, then most seconds', () => {
  const rows = [entry('p', '9', '3'), entry('q', '8', '2'), entry('r', '7', '1')];
  expect(overall(computeStandings(input(rows))).map(([, place]) => place)).toEqual([1, 1, 1]);
  expect(overall(computeStandings(input(rows, { tieBreak: 'mostFirsts' })))).toEqual([
    ['p', 1, '4'],
    ['r', 1, '4'],
    ['q', 3, '4'],
  ]);
});

test('an incomplete entry is placed where it has results, not overall', () => {
  const standings = computeStandings(input([...four, entry('v', '50', null)]));
  expect(standings.incomplete).toEqual([{ id: 'v', missing: ['b'] }]);
  expect(standings.categories['a']![0]).toMatchObject({ id: 'v', place: 1 });
  expect(standings.overall.map(({ id }) => id)).not.toContain('v');
  expect(standings.categories['b']!.map(({ id }) => id)).not.toContain('v');
});

test('an excluded entry that is closed up is in no table, and the others move up', () => {
  const standings = computeStandings(input([entry('w', '40', '1', { effect: 'closedUp' }), ...four.slice(1)]));
  expect(overall(standings)).toEqual([
    ['x', 1, '2'],
    ['y', 2, '4'],
    ['z', 3, '6'],
  ]);
  expect(standings.categories['a']!.map(({ id, place }) => [id, place])).toEqual([
    ['x', 1],
    ['y', 2],
    ['z', 3],
  ]);
  expect(standings.excluded).toEqual(['w']);
});

test('an excluded entry that is shown unplaced keeps its row and the place it would have had', () => {
  const standings = computeStandings(input([entry('w', '40', '1'), entry('x', '30', '2', { effect: 'shownUnplaced' }), ...four.slice(2)]));
  expect(standings.overall.map(({ id, place, placeIfIncluded }) => [id, place, placeIfIncluded])).toEqual([
    ['w', 1, null],
    ['x', null, 2],
    ['y', 2, null],
    ['z', 3, null],
  ]);
  expect(standings.categories['b']!.find(({ id }) => id === 'x')).toMatchObject({ place: null, placeIfIncluded: 2 });
});

test('the scheme says whether category places are counted before or after exclusions', () => {
  const rows = [entry('w', '40', '9', { effect: 'closedUp' }), entry('x', '30', '2'), entry('y', '20', '1')];
  const after = computeStandings(input(rows));
  expect(after.overall.map(({ id, score }) => [id, score])).toEqual([
    ['x', '3'],
    ['y', '3'],
  ]);
  const before = computeStandings(input(rows, { countPlaces: 'beforeExclusions' }));
  expect(before.overall.map(({ id, score, categoryPlaces }) => [id, score, categoryPlaces['a']])).toEqual([
    ['x', '4', 2],
    ['y', '4', 3],
  ]);
});

test('weighted places, standard scores and pairwise wins', () => {
  const categories = [
    { direction: 'more' as const, weight: '2', places: [1, 2, 3], values: ['3', '2', '1'] },
    { direction: 'less' as const, weight: '0.5', places: [3, 2, 1], values: ['9', '8', '7'] },
  ];
  expect(overallScores(categories, 'weightedSumOfPlaces')).toEqual(['3.500', '5.000', '6.500']);
  // z = 1, 0, −1 in both (s = 1), the second turned round: (2·1 − 0.5·1)/2.5 = 0.6
  expect(overallScores(categories, 'meanStandardScore')).toEqual(['0.600', '0.000', '-0.600']);
  expect(overallScores(categories.slice(0, 1), 'pairwiseWins')).toEqual(['2.0', '1.0', '0.0']);
  expect(overallScores(categories, 'pairwiseWins')).toEqual(['1.0', '1.0', '1.0']);
  expect(overallScores([{ direction: 'more', weight: '1', places: [1, 1], values: ['5', '5'] }], 'meanStandardScore')).toEqual([
    '0.000',
    '0.000',
  ]);
});

test('permutation of the entries changes nothing', () => {
  expect(computeStandings(input([...four].reverse()))).toEqual(computeStandings(input(four)));
});

test('movement: moved, unchanged, new, returned, run at the top', () => {
  const now = [
    { id: 'a', place: 1 },
    { id: 'b', place: 2 },
    { id: 'c', place: 3 },
    { id: 'd', place: 4 },
    { id: 'e', place: null },
  ];
  const last = [
    { id: 'a', place: 1 },
    { id: 'b', place: 4 },
    { id: 'd', place: null },
    { id: 'e', place: 2 },
  ];
  const before = [
    { id: 'a', place: 1 },
    { id: 'd', place: 2 },
  ];
  const moved = movement(now, [last, before, [{ id: 'a', place: 2 }]]);
  expect(moved.get('a')).toEqual({ kind: 'unchanged', places: 0, runAtTop: 3 });
  expect(moved.get('b')).toEqual({ kind: 'moved', places: 2, runAtTop: 0 });
  expect(moved.get('c')).toEqual({ kind: 'new', places: null, runAtTop: 0 });
  expect(moved.get('d')).toEqual({ kind: 'returned', places: null, runAtTop: 0 });
  expect(moved.get('e')).toEqual({ kind: 'unchanged', places: null, runAtTop: 0 });
});

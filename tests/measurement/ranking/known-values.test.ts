import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { computeStandings } from '../../../api/measurement/ranking/places/standings.js';
import { roundHalfEven } from '../../../api/measurement/units/round-half-even.js';
import { DIGEST, inputOf, known, rankKnown } from './ranking-fixtures.js';
import type { KnownInput } from './ranking-fixtures.js';

const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);
const sets = (rows: readonly { low: number; high: number; group: number }[]) => rows.map(({ low, high, group }) => [low, high, group]);

const base = inputOf({
  a: [100, 98, 90, 70].map((value) => known(value, 1)),
  b: [50, 53, 51, 20].map((value) => known(value, 1)),
});

test('far apart: every place is certain; close together: one group; no numbers that are none', () => {
  const apart = rankKnown(inputOf({ a: [30, 20, 10].map((value) => known(value, 0.1)) }));
  expect(sets(apart.overall.rows)).toEqual([
    [1, 1, 1],
    [2, 2, 2],
    [3, 3, 3],
  ]);
  expect(apart.overall.rows.map(({ chanceOfFirst, chanceAheadOfNext }) => [chanceOfFirst, chanceAheadOfNext])).toEqual([
    [1, 1],
    [0, 1],
    [0, null],
  ]);
  const close = rankKnown(inputOf({ a: [10.01, 10, 9.99].map((value) => known(value, 1)) }));
  expect(sets(close.categories['a']!.rows)).toEqual([
    [1, 3, 1],
    [1, 3, 1],
    [1, 3, 1],
  ]);
  close.overall.rows.forEach(({ chanceOfFirst, chanceOfFirstFive }) => {
    expect(chanceOfFirst).toBeCloseTo(1 / 3, 1);
    expect(chanceOfFirstFive).toBe(1);
  });
});

/** Ten entries: 2.8 uncertainties of a difference are more than Dunnett's 2.46 and less than 3.16 of all pairs (Tukey's 4.474/√2; tables of any textbook). */
test('who could be first is told by comparison with the best, which asks less than the pairs of the first group do', () => {
  const ahead = 100 * Math.exp(2.8 * Math.SQRT2 * 0.01);
  const { rows } = rankKnown(inputOf({ a: [ahead, ...Array<number>(9).fill(100)].map((value) => known(value, 0.01 * value)) })).categories[
    'a'
  ]!;
  expect(rows.map(({ group }) => group)).toEqual(Array(10).fill(1));
  expect(rows.map(({ couldBeFirst }) => couldBeFirst)).toEqual([true, ...Array<boolean>(9).fill(false)]);
});

test('the order of entries and categories in the input changes nothing', () => {
  const rigged = inputOf(
    {
      a: [100, 98, 90].map((value, i) => known(value, 1, { shared: [i === 0 ? 'r1' : 'r2'] })),
      b: [5, 6, 7].map((value) => known(value, 1, { degreesOfFreedom: 4 })),
    },
    { certificates: { r1: 0.01, r2: 0.02 } },
  );
  const turned: KnownInput = { ...rigged, entries: [...rigged.entries].reverse(), categories: [...rigged.categories].reverse() };
  expect(rankKnown(turned)).toEqual(rankKnown(rigged));
  expect(rankKnown({ ...rigged, digest: DIGEST.replace('9', '8') }).overall).not.toEqual(rankKnown(rigged).overall);
});

test('a change of unit changes no place, no interval and no chance', () => {
  const values = [100, 98.5, 97, 90];
  const ranked = (scale: number) =>
    rankKnown(
      inputOf(
        { a: values.map((value, i) => known(scale * value, scale, { shared: [`r${i % 2}`] })) },
        { certificates: { r0: 0.02, r1: 0.02 } },
      ),
    );
  expect(ranked(4).overall).toEqual(ranked(1).overall);
});

test('less is better: the inverse values give the same table', () => {
  const more = inputOf({ a: [3, 2, 1].map((value) => known(value, 0.1 * value)) });
  const less: KnownInput = {
    ...inputOf({ a: [3, 2, 1].map((value) => known(1 / value, 0.1 / value)) }),
    categories: [{ code: 'a', direction: 'less', weight: '1', places: 6 }],
  };
  const [one, other] = [rankKnown(more), rankKnown(less)];
  expect(ids(other.overall.rows)).toEqual(ids(one.overall.rows));
  expect(sets(other.overall.rows)).toEqual(sets(one.overall.rows));
});

test('what two certificates cover may tell apart what it must not; under one certificate it cancels', () => {
  const on = (...certificates: (string | null)[]) => {
    const column = [100, 98].map((value, i) => known(value, 0.2, { shared: certificates[i] ? [certificates[i]] : [] }));
    return sets(rankKnown(inputOf({ a: column }, { certificates: { c1: 0.02, c2: 0.02 } })).categories['a']!.rows);
  };
  const apart = [
    [1, 1, 1],
    [2, 2, 2],
  ];
  expect(on(null, null)).toEqual(apart);
  expect(on('c1', 'c1')).toEqual(apart);
  expect(on('c1', 'c2')).toEqual([
    [1, 2, 1],
    [1, 2, 1],
  ]);
});

test('few degrees of freedom widen', () => {
  const width = (degreesOfFreedom: number) => {
    const { rows } = rankKnown(inputOf({ a: Array.from({ length: 10 }, (_, i) => known(100 - 3 * i, 1, { degreesOfFreedom })) }))
      .categories['a']!;
    return rows.reduce((sum, { low, high }) => sum + high - low, 0);
  };
  expect(width(3)).toBeGreaterThan(width(Infinity));
});

describe('special results', () => {
  test('one entry, no entry, no category', () => {
    const one = rankKnown(inputOf({ a: [known(5, 1)] }));
    expect(one.overall).toEqual({
      kind: 'placed',
      criticalValue: null,
      pairChances: Float64Array.of(0.5),
      rows: [
        {
          id: 'e001',
          place: 1,
          low: 1,
          high: 1,
          group: 1,
          couldBeFirst: true,
          chanceOfFirst: 1,
          chanceOfFirstFive: 1,
          chanceAheadOfNext: null,
        },
      ],
    });
    const none = { overall: { rows: [] }, categories: { a: { rows: [] } }, sensitivity: { weights: null } };
    expect(rankKnown(inputOf({ a: [] }))).toMatchObject(none);
    expect(rankKnown({ ...inputOf({}), entries: [{ id: 'x', isExcluded: false, results: {} }] }).overall.rows).toEqual([]);
  });

  test.each(['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'] as const)(
    'all equal and as good as known, under %s: all first',
    (combine) => {
      const equal = (value: number) => [value, value, value].map((one) => known(one, 0));
      const { overall, categories } = rankKnown(inputOf({ a: equal(0.1), b: equal(7) }, { combine }));
      expect(overall.rows.map(({ place, low, high }) => [place, low, high])).toEqual([1, 1, 1].map(() => [1, 1, 3]));
      expect(categories['a']!.rows[0]!.chanceAheadOfNext).toBeCloseTo(0.5, 1);
    },
  );

  test('without uncertainty every difference tells', () => {
    expect(sets(rankKnown(inputOf({ a: [3, 2, 2].map((value) => known(value, 0)) })).overall.rows)).toEqual([
      [1, 1, 1],
      [2, 3, 2],
      [2, 3, 2],
    ]);
  });

  test('values that tie as published share a place; the interval holds it', () => {
    const input = inputOf({ a: [known(10.004, 0), known(10.001, 0)] });
    const { rows } = rankKnown({ ...input, categories: [{ code: 'a', direction: 'more', weight: '1', places: 2 }] }).categories['a']!;
    expect(rows.map(({ place, low, high }) => [place, low, high])).toEqual([
      [1, 1, 1],
      [1, 1, 2],
    ]);
  });
});

describe('who counts', () => {
  const excluded = (countPlaces: KnownInput['countPlaces']) => ({
    ...base,
    countPlaces,
    entries: base.entries.map((entry, i) => (i === 1 ? { ...entry, isExcluded: true } : entry)),
  });

  test.each(['beforeExclusions', 'afterExclusions'] as const)('an excluded entry is in no table (%s)', (countPlaces) => {
    const found = rankKnown(excluded(countPlaces));
    expect(ids(found.overall.rows)).toEqual(['e001', 'e003', 'e004']);
    expect(ids(found.categories['b']!.rows)).toEqual(['e003', 'e001', 'e004']);
    expect(found.categories['b']!.rows[0]!.high).toBeLessThanOrEqual(3);
  });

  test('an excluded entry counts for category places in the draws too, when the scheme says so', () => {
    // b: e002, then the excluded e003, then e001
    const columns = { a: [9, 8, 1].map((value) => known(value, 0)), b: [7, 9, 8].map((value) => known(value, 0)) };
    const chances = (countPlaces: KnownInput['countPlaces']) => {
      const input = inputOf(columns, { countPlaces });
      const entries = input.entries.map((entry, i) => ({ ...entry, isExcluded: i === 2 }));
      return rankKnown({ ...input, entries }).overall.rows.map(({ id, chanceOfFirst }) => [id, chanceOfFirst]);
    };
    expect(chances('beforeExclusions')).toEqual([
      ['e002', 1],
      ['e001', 0],
    ]);
    expect(chances('afterExclusions')).toEqual([
      ['e001', 1],
      ['e002', 1],
    ]);
  });

  test('an entry without all results is in its categories, not overall', () => {
    const found = rankKnown(inputOf({ a: [known(3, 1), known(2, 1)], b: [known(3, 1), null] }));
    expect(ids(found.overall.rows)).toEqual(['e001']);
    expect(ids(found.categories['a']!.rows)).toEqual(['e001', 'e002']);
    expect(ids(found.categories['b']!.rows)).toEqual(['e001']);
  });
});

// The draws and the published standings follow the same rules: held against computeStandings on invented editions.
test.each(
  (['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'] as const).flatMap((combine) => [
    [combine, 'none', 'beforeExclusions'] as const,
    [combine, 'mostFirsts', 'afterExclusions'] as const,
  ]),
)('places as computeStandings gives them: %s, %s, %s', (combine, tieBreak, countPlaces) => {
  const random = randomStream([combine.length, tieBreak.length, countPlaces.length, 9]);
  const column = () => Array.from({ length: 14 }, (_, i) => (i === 3 ? null : known(1 + Math.floor(6 * random.nextUniform()), 0.4)));
  const plain = inputOf({ a: column(), b: column(), c: column() }, { combine, tieBreak, countPlaces });
  const input: KnownInput = {
    ...plain,
    categories: plain.categories.map((category, c) => ({
      ...category,
      weight: ['1', '0.3', '2.5'][c]!,
      direction: c === 1 ? 'less' : 'more',
      places: 0,
    })),
    entries: plain.entries.map((entry, i) => ({ ...entry, isExcluded: i === 5 })),
  };
  const standings = computeStandings({
    ...input,
    entries: input.entries.map(({ id, isExcluded, results }) => ({
      id,
      exclusion: isExcluded ? { effect: 'closedUp' } : null,
      values: Object.fromEntries(
        Object.entries(results).map(([code, evidence]) => [code, evidence && roundHalfEven(String(evidence.value), 0)]),
      ),
    })),
  });
  const found = rankKnown(input);
  expect(found.overall.rows.map(({ id, place }) => [id, place])).toEqual(standings.overall.map(({ id, place }) => [id, place]));
  for (const code of ['a', 'b', 'c']) {
    expect(found.categories[code]!.rows.map(({ id, place }) => [id, place])).toEqual(
      standings.categories[code]!.map(({ id, place }) => [id, place]),
    );
  }
  // The most likely order is about the published one: nobody who is first has no chance of it.
  expect(found.overall.rows[0]!.chanceOfFirst).toBeGreaterThan(0);
});

test('a scheme that breaks ties breaks them in the draws too', () => {
  const column = (values: number[]) => values.map((value) => known(value, 0));
  const input = inputOf({ a: column([9, 8, 7]), b: column([1, 3, 2]), c: column([2, 2.5, 2.5]) }, { tieBreak: 'mostFirsts' });
  // Places: a 1 2 3, b 3 1 2, c 3 1 1: sums 7, 4, 6
  expect(rankKnown(input).overall.rows.map(({ id, chanceOfFirst }) => [id, chanceOfFirst])).toEqual([
    ['e002', 1],
    ['e003', 0],
    ['e001', 0],
  ]);
  const tied = inputOf({ a: column([3, 2, 1]), b: column([1, 2, 3]) }, { tieBreak: 'mostFirsts' });
  // Sums 1+3, 2+2, 3+1: equal; the middle one has no first place, the others one
  expect(rankKnown(tied).overall.rows.map(({ id, place, chanceOfFirst }) => [id, place, chanceOfFirst])).toEqual([
    ['e001', 1, 1],
    ['e003', 1, 1],
    ['e002', 3, 0],
  ]);
});

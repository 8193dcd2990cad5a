import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { computeStandings } from '../../../api/measurement/ranking/standings.js';
import { rankWithUncertainty } from '../support/former-ranking/rank-with-uncertainty.js';
import type { RankingInput } from '../support/former-ranking/ranking-input.js';
import { roundHalfEven } from '../../../api/measurement/units/round-half-even.js';
import { errorCode } from '../support/error-code.js';
import { DIGEST, idOf, inputOf, known } from './ranking-fixtures.js';

const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);
const sets = (rows: readonly { low: number; high: number; group: number }[]) => rows.map(({ low, high, group }) => [low, high, group]);

const base = inputOf({
  a: [100, 98, 90, 70].map((value) => known(value, 1)),
  b: [50, 53, 51, 20].map((value) => known(value, 1)),
});

test('far apart: every place is certain; close together: one group; no numbers that are none', () => {
  const apart = rankWithUncertainty(inputOf({ a: [30, 20, 10].map((value) => known(value, 0.1)) }));
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
  const close = rankWithUncertainty(inputOf({ a: [10.01, 10, 9.99].map((value) => known(value, 1)) }));
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

test('the order of entries, categories and sources in the input changes nothing', () => {
  const sources = {
    r2: { relativeStandardUncertainty: 0.02, degreesOfFreedom: 5 },
    r1: { relativeStandardUncertainty: 0.01, degreesOfFreedom: Infinity },
  };
  const rigged = inputOf(
    {
      a: [100, 98, 90].map((value, i) => known(value, 1, { shared: [{ source: i === 0 ? 'r1' : 'r2', sensitivity: 1 }] })),
      b: [5, 6, 7].map((value) => known(value, 1, { degreesOfFreedom: 4 })),
    },
    { sources },
  );
  const turned: RankingInput = {
    ...rigged,
    entries: [...rigged.entries].reverse(),
    categories: [...rigged.categories].reverse(),
    sources: { r1: sources.r1, r2: sources.r2 },
  };
  expect(rankWithUncertainty(turned)).toEqual(rankWithUncertainty(rigged));
  expect(rankWithUncertainty({ ...rigged, digest: DIGEST.replace('9', '8') }).overall).not.toEqual(rankWithUncertainty(rigged).overall);
});

test('shift and scale change no place, no interval and no chance', () => {
  const values = [100, 98.5, 97, 90];
  const moved = (scale: number, shift: number) =>
    rankWithUncertainty(inputOf({ a: values.map((value) => known(scale * value + shift, scale)) }));
  expect(moved(4, 64).overall).toEqual(moved(1, 0).overall);
  const rigs = (scale: number) =>
    rankWithUncertainty(
      inputOf(
        { a: values.map((value, i) => known(scale * value, scale, { shared: [{ source: `r${i % 2}`, sensitivity: 1 }] })) },
        {
          sources: {
            r0: { relativeStandardUncertainty: 0.02, degreesOfFreedom: 9 },
            r1: { relativeStandardUncertainty: 0.02, degreesOfFreedom: 9 },
          },
        },
      ),
    );
  expect(rigs(4).overall).toEqual(rigs(1).overall);
});

test('less is better: the mirrored input gives the same table', () => {
  const more = inputOf({ a: [3, 2, 1].map((value) => known(value, 0.5)) });
  const less: RankingInput = {
    ...inputOf({ a: [-3, -2, -1].map((value) => known(value, 0.5)) }),
    categories: [{ code: 'a', direction: 'less', weight: '1', places: 6 }],
  };
  const [one, other] = [rankWithUncertainty(more), rankWithUncertainty(less)];
  expect(ids(other.overall.rows)).toEqual(ids(one.overall.rows));
  expect(sets(other.overall.rows)).toEqual(sets(one.overall.rows));
});

test('an ignored rig effect tells apart what it must not; on one rig it cancels', () => {
  const values = [100, 98];
  const on = (rigs: string[]) =>
    rankWithUncertainty(
      inputOf(
        { a: values.map((value, i) => known(value, 0.2, { shared: [{ source: rigs[i]!, sensitivity: 1 }] })) },
        {
          sources: {
            r1: { relativeStandardUncertainty: 0.02, degreesOfFreedom: Infinity },
            r2: { relativeStandardUncertainty: 0.02, degreesOfFreedom: Infinity },
          },
        },
      ),
    );
  expect(sets(rankWithUncertainty(inputOf({ a: values.map((value) => known(value, 0.2)) })).categories['a']!.rows)).toEqual([
    [1, 1, 1],
    [2, 2, 2],
  ]);
  expect(sets(on(['r1', 'r1']).categories['a']!.rows)).toEqual([
    [1, 1, 1],
    [2, 2, 2],
  ]);
  expect(sets(on(['r1', 'r2']).categories['a']!.rows)).toEqual([
    [1, 2, 1],
    [1, 2, 1],
  ]);
});

test('few degrees of freedom widen', () => {
  const width = (degreesOfFreedom: number) => {
    const { rows } = rankWithUncertainty(inputOf({ a: Array.from({ length: 10 }, (_, i) => known(100 - 3 * i, 1, { degreesOfFreedom })) }))
      .categories['a']!;
    return rows.reduce((sum, { low, high }) => sum + high - low, 0);
  };
  expect(width(3)).toBeGreaterThan(width(Infinity));
});

describe('special results', () => {
  test('one entry, no entry, no category', () => {
    const one = rankWithUncertainty(inputOf({ a: [known(5, 1)] }));
    expect(one.overall).toEqual({
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
    expect(rankWithUncertainty(inputOf({ a: [] }))).toMatchObject(none);
    expect(rankWithUncertainty({ ...inputOf({}), entries: [{ id: 'x', isExcluded: false, results: {} }] }).overall.rows).toEqual([]);
  });

  test.each(['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'] as const)(
    'all equal without uncertainty, under %s: all first',
    (combine) => {
      const { overall, categories } = rankWithUncertainty(
        inputOf({ a: [0.1, 0.1, 0.1].map((value) => known(value, 0)), b: [7, 7, 7].map((value) => known(value, 0)) }, { combine }),
      );
      expect(overall.rows.map(({ place, low, high, chanceOfFirst }) => [place, low, high, chanceOfFirst])).toEqual(
        [1, 1, 1].map(() => [1, 1, 3, 1]),
      );
      expect(categories['a']!.rows[0]!.chanceAheadOfNext).toBe(0.5);
    },
  );

  test('without uncertainty every difference tells', () => {
    expect(sets(rankWithUncertainty(inputOf({ a: [3, 2, 2].map((value) => known(value, 0)) })).overall.rows)).toEqual([
      [1, 1, 1],
      [2, 3, 2],
      [2, 3, 2],
    ]);
  });

  test('values that tie as published share a place; the interval holds it', () => {
    const input = inputOf({ a: [known(10.004, 0), known(10.001, 0)] });
    const { rows } = rankWithUncertainty({ ...input, categories: [{ code: 'a', direction: 'more', weight: '1', places: 2 }] }).categories[
      'a'
    ]!;
    expect(rows.map(({ place, low, high }) => [place, low, high])).toEqual([
      [1, 1, 1],
      [1, 1, 2],
    ]);
  });
});

describe('who counts', () => {
  const excluded = (countPlaces: RankingInput['countPlaces']) => ({
    ...base,
    countPlaces,
    entries: base.entries.map((entry, i) => (i === 1 ? { ...entry, isExcluded: true } : entry)),
  });

  test.each(['beforeExclusions', 'afterExclusions'] as const)('an excluded entry is in no table (%s)', (countPlaces) => {
    const found = rankWithUncertainty(excluded(countPlaces));
    expect(ids(found.overall.rows)).toEqual(['e001', 'e003', 'e004']);
    expect(ids(found.categories['b']!.rows)).toEqual(['e003', 'e001', 'e004']);
    expect(found.categories['b']!.rows[0]!.high).toBeLessThanOrEqual(3);
  });

  test('an excluded entry counts for category places in the draws too, when the scheme says so', () => {
    // b: e002, then the excluded e003, then e001
    const columns = { a: [9, 8, 1].map((value) => known(value, 0)), b: [7, 9, 8].map((value) => known(value, 0)) };
    const chances = (countPlaces: RankingInput['countPlaces']) => {
      const input = inputOf(columns, { countPlaces });
      const entries = input.entries.map((entry, i) => ({ ...entry, isExcluded: i === 2 }));
      return rankWithUncertainty({ ...input, entries }).overall.rows.map(({ id, chanceOfFirst }) => [id, chanceOfFirst]);
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
    const found = rankWithUncertainty(inputOf({ a: [known(3, 1), known(2, 1)], b: [known(3, 1), null] }));
    expect(ids(found.overall.rows)).toEqual(['e001']);
    expect(ids(found.categories['a']!.rows)).toEqual(['e001', 'e002']);
    expect(ids(found.categories['b']!.rows)).toEqual(['e001']);
  });
});

// The draws and the published standings follow the same rules: held against computeStandings on invented editions.
test.each(
  (['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'] as const).flatMap((combine) =>
    (['none', 'mostFirsts'] as const).flatMap((tieBreak) =>
      (['beforeExclusions', 'afterExclusions'] as const).map((countPlaces) => [combine, tieBreak, countPlaces] as const),
    ),
  ),
)('places as computeStandings gives them: %s, %s, %s', (combine, tieBreak, countPlaces) => {
  const random = randomStream([combine.length, tieBreak.length, countPlaces.length, 9]);
  const column = () => Array.from({ length: 14 }, (_, i) => (i === 3 ? null : known(Math.floor(6 * random.nextUniform()), 0.4)));
  const plain = inputOf({ a: column(), b: column(), c: column() }, { combine, tieBreak, countPlaces });
  const input: RankingInput = {
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
  const found = rankWithUncertainty(input);
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
  expect(rankWithUncertainty(input).overall.rows.map(({ id, chanceOfFirst }) => [id, chanceOfFirst])).toEqual([
    ['e002', 1],
    ['e003', 0],
    ['e001', 0],
  ]);
  const tied = inputOf({ a: column([3, 2, 1]), b: column([1, 2, 3]), c: column([1, 1, 1]) }, { tieBreak: 'mostFirsts' });
  // Sums 1+3+1, 2+2+1, 3+1+1: equal; the middle one has one first place, the others two
  expect(rankWithUncertainty(tied).overall.rows.map(({ id, place, chanceOfFirst }) => [id, place, chanceOfFirst])).toEqual([
    ['e001', 1, 1],
    ['e003', 1, 1],
    ['e002', 3, 0],
  ]);
});

test('what cannot be ranked is refused', () => {
  const bad = (change: Partial<RankingInput>) => errorCode(() => rankWithUncertainty({ ...base, ...change }));
  const oneOf = (evidence: ReturnType<typeof known>) => errorCode(() => rankWithUncertainty(inputOf({ a: [evidence] })));
  expect(bad({ digest: 'abc' })).toBe('random/not-a-digest');
  expect(bad({ draws: 9999 })).toBe('ranking/too-few-draws');
  expect(bad({ draws: 10_000.5 })).toBe('ranking/too-few-draws');
  expect(bad({ level: 1 })).toBe('distributions/out-of-domain');
  expect(bad({ entries: [...base.entries, base.entries[0]!] })).toBe('ranking/not-unique');
  expect(bad({ categories: [...base.categories, base.categories[0]!] })).toBe('ranking/not-unique');
  expect(bad({ categories: [{ ...base.categories[0]!, weight: '-1' }] })).toBe('ranking/bad-weight');
  expect(bad({ entries: Array.from({ length: 4097 }, (_, i) => ({ id: idOf(i), isExcluded: false, results: {} })) })).toBe(
    'ranking/too-many-entries',
  );
  expect(bad({ sources: { r: { relativeStandardUncertainty: -0.01, degreesOfFreedom: 1 } } })).toBe('ranking/bad-evidence');
  expect(bad({ sources: { r: { relativeStandardUncertainty: 0.01, degreesOfFreedom: 0 } } })).toBe('ranking/bad-evidence');
  expect(oneOf(known(NaN, 1))).toBe('ranking/bad-evidence');
  expect(oneOf(known(1, NaN))).toBe('ranking/bad-evidence');
  expect(oneOf(known(1, -1))).toBe('ranking/bad-evidence');
  expect(oneOf(known(1, 1, { degreesOfFreedom: 0 }))).toBe('ranking/bad-evidence');
  expect(oneOf(known(1, 1, { without: { t: NaN } }))).toBe('ranking/bad-evidence');
  expect(oneOf(known(1, 1, { shared: [{ source: 'r', sensitivity: 1 }] }))).toBe('ranking/unknown-source');
});

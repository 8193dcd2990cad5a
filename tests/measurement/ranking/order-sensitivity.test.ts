import { inputOf, known, rankKnown } from './ranking-fixtures.js';

const column = (values: readonly number[]) => values.map((value) => known(value, 0.1));
const sensitivity = (...args: Parameters<typeof inputOf>) => rankKnown(inputOf(...args)).sensitivity;

// Places: a 1 2 3, b 1 2 3, c 3 1 2
const columns = { a: column([9, 8, 7]), b: column([9, 8, 7]), c: column([1, 3, 2]) };

test('each category left out: who is first then, and which pairs turn round', () => {
  const { leftOut } = sensitivity(columns);
  const without = (name: string) => leftOut.find((one) => one.name === name)!;
  // Sums 5, 5, 8; without c 2, 4, 6; without a 4, 3, 5
  expect(without('c')).toEqual({ kind: 'category', name: 'c', first: ['e001'], swappedPairs: 0, swaps: [], dropped: [] });
  expect(without('a').first).toEqual(['e002']);
  const { leftOut: plain } = sensitivity({ a: column([9, 8]), b: column([9, 8]), c: column([9, 8]), d: column([1, 5]) });
  expect(plain.every(({ first }) => first.join() === 'e001')).toBe(true);
  expect(sensitivity({ a: column([9, 8]) }).leftOut).toEqual([]);
});

test('a pair that turns round without a category is named, the one that is then ahead first', () => {
  // Weighted: c counts so much that it decides
  const input = inputOf(columns, { combine: 'weightedSumOfPlaces' });
  const { leftOut } = rankKnown({
    ...input,
    categories: input.categories.map((category) => ({ ...category, weight: category.code === 'c' ? '5' : '1' })),
  }).sensitivity;
  // Sums 2+15, 4+5, 6+10: e002, e003, e001; without c: e001, e002, e003
  expect(leftOut.find(({ name }) => name === 'c')).toMatchObject({
    first: ['e001'],
    swappedPairs: 2,
    swaps: [
      ['e001', 'e002'],
      ['e001', 'e003'],
    ],
  });
});

test('each tester and rig left out: by the values that are left, entries without any are dropped', () => {
  const a = [
    known(9, 0.1, { without: { 'tester:t1': 5, 'rig:r1': null } }),
    known(8, 0.1),
    known(7, 0.1, { without: { 'tester:t1': 8.5 } }),
  ];
  const { leftOut } = sensitivity({ a });
  expect(leftOut).toEqual([
    { kind: 'party', name: 'rig:r1', first: ['e002'], swappedPairs: 0, swaps: [], dropped: ['e001'] },
    {
      kind: 'party',
      name: 'tester:t1',
      first: ['e003'],
      swappedPairs: 3,
      swaps: [
        ['e002', 'e001'],
        ['e003', 'e001'],
        ['e003', 'e002'],
      ],
      dropped: [],
    },
  ]);
});

test('irrelevant third parties can turn a pair round under the sum of places, and that is found', () => {
  const { leftOut } = sensitivity({ a: column([9, 5, 8, 7]), b: column([7, 9, 4, 3]), c: column([9, 8, 1, 2]) });
  // Places a 1 4 2 3, b 2 1 3 4, c 1 2 4 3: sums 4, 7, 9, 10
  expect(leftOut.filter(({ kind }) => kind === 'entry')).toEqual([]);
  const turned = sensitivity({ a: column([5, 9, 8]), b: column([9, 8.5, 1]), c: column([9, 8.5, 1]), d: column([1, 9, 5]) });
  // Places a 3 1 2, b 1 2 3, c 1 2 3, d 3 1 2: sums 8, 6, 10; without e003: 6, 6: tied, not turned round
  expect(turned.leftOut.filter(({ kind }) => kind === 'entry')).toEqual([]);
  const both = sensitivity({
    a: column([5, 9, 8]),
    b: column([9, 8.5, 1]),
    c: column([9, 8.5, 1]),
    d: column([9, 8, 1]),
    e: column([1, 9, 5]),
  });
  // Sums 3+1+1+1+3 = 9, 1+2+2+2+1 = 8: e002 ahead; without e003 7 and 8: turned round
  expect(both.leftOut.filter(({ kind }) => kind === 'entry')).toEqual([
    { kind: 'entry', name: 'e003', first: ['e001'], swappedPairs: 1, swaps: [['e001', 'e002']], dropped: [] },
  ]);
});

describe('weights', () => {
  test('two categories that disagree: each first under half of all weights, and the smallest change is exact', () => {
    // Places a 1 2, b 2 1, equal weights: tied; then nothing has to move
    const tied = sensitivity({ a: column([2, 1]), b: column([1, 2]) }).weights!;
    expect(tied.firstPlaces.map(({ id }) => id).sort()).toEqual(['e001', 'e002']);
    tied.firstPlaces.forEach(({ share }) => expect(share).toBeCloseTo(0.5, 1));
    expect(tied.smallestChange).toEqual({ weightMoved: 0, id: 'e002' });
    // Three categories, two for e001: lead (1 + 1 − 1)/3; moving m from a to b gains 2m: m = 1/6
    const led = sensitivity({ a: column([2, 1]), b: column([1, 2]), c: column([2, 1]) }).weights!;
    expect(led.smallestChange!.weightMoved).toBeCloseTo(1 / 6, 12);
    // Under Dirichlet(1, 1, 1) the weight of b is above ½ with probability (1 − ½)² = ¼
    expect(led.firstPlaces[0]!.share).toBeCloseTo(0.75, 1);
    expect(Math.abs(led.firstPlaces[0]!.share - 0.75)).toBeLessThan(4 * Math.sqrt((0.75 * 0.25) / 10_000));
  });

  test('who is ahead everywhere is first under any weights', () => {
    expect(sensitivity({ a: column([3, 2]), b: column([5, 1]) }).weights).toEqual({
      firstPlaces: [{ id: 'e001', share: 1 }],
      smallestChange: null,
    });
  });

  test('a lead in one category and a tie in the other: all weight of the one has to move', () => {
    expect(sensitivity({ a: column([2, 1]), b: column([5, 5]) }).weights!.smallestChange).toEqual({ weightMoved: 0.5, id: 'e002' });
  });

  test('weight moves from the largest lead first, and from the next when that is used up', () => {
    // Places of e001: 1 1 4, of e002: 4 2 1 → leads 3, 1, −3; weights ⅓ each: lead ⅓; from the first to the last gains 6 a unit: 1/18
    const found = sensitivity({ a: column([9, 6, 8, 7]), b: column([9, 8, 7, 6]), c: column([1, 9, 2, 3]) }).weights!;
    expect(found.smallestChange).toMatchObject({ id: 'e002' });
    expect(found.smallestChange!.weightMoved).toBeCloseTo(1 / 18, 12);
    // Weights 0.1, 0.8, 0.1 and leads 3, 1, −3: lead 0.8; all 0.1 of the first gains 0.6, the rest 0.2 at 4 a unit: 0.15
    const input = inputOf(
      { a: column([9, 6, 8, 7]), b: column([9, 8, 7, 6]), c: column([1, 9, 2, 3]) },
      { combine: 'weightedSumOfPlaces' },
    );
    const weighted = rankKnown({
      ...input,
      categories: input.categories.map((category, c) => ({ ...category, weight: ['1', '8', '1'][c]! })),
    });
    expect(weighted.sensitivity.weights!.smallestChange!.weightMoved).toBeCloseTo(0.15, 12);
  });

  test('mean standard scores have weights too, pairwise wins have none', () => {
    expect(
      sensitivity(columns, { combine: 'meanStandardScore' }).weights!.firstPlaces.reduce((sum, { share }) => sum + share, 0),
    ).toBeCloseTo(1, 9);
    expect(sensitivity(columns, { combine: 'pairwiseWins' }).weights).toBeNull();
  });
});

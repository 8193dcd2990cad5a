import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { seedFromDigest } from '../../../api/measurement/random/seed-from-digest.js';
import { settledValues } from '../../../api/measurement/ranking/settled-values.js';
import { mean } from '../../../api/measurement/summary/mean.js';
import { standardDeviation } from '../../../api/measurement/summary/standard-deviation.js';
import { inputOf, known, rankKnown } from './ranking-fixtures.js';

describe('settled values', () => {
  test('are as far apart as the truth at least: found variance less what noise may make', () => {
    const values = Float64Array.of(10, 12, 14, 16, 18);
    const s = Float64Array.from({ length: 25 }, (_, at) => (at % 6 === 0 ? 0 : 2));
    const settled = settledValues(values, s);
    // s_x² = 10; noise s²/2 = 2 of one value, at most 13.2767/4 times that (χ²(0.99; 4), tables)
    expect(standardDeviation([...settled]) ** 2).toBeCloseTo(10 - (2 * 13.2767) / 4, 4);
    expect(mean([...settled])).toBeCloseTo(14, 12);
  });

  test('of equal values, of noise alone, without noise, and of one', () => {
    expect([...settledValues(Float64Array.of(5, 5), Float64Array.of(0, 1, 1, 0))]).toEqual([5, 5]);
    expect([...settledValues(Float64Array.of(4, 6), Float64Array.of(0, 9, 9, 0))]).toEqual([5, 5]);
    expect([...settledValues(Float64Array.of(4, 6), new Float64Array(4))]).toEqual([4, 6]);
    expect([...settledValues(Float64Array.of(4), new Float64Array(1))]).toEqual([4]);
  });
});

// Twelve equal lines in three categories: nothing is to be told apart overall, in about 95 % of seeded editions.
test('overall intervals of equals hold all places', () => {
  // A digest for a seed: a state of few bits starts slowly.
  const random = randomStream(seedFromDigest('60303ae22b998861bce3b28f33eec1be758a213c86c93c076dbe9f558c11c752')); // SHA-256 of "test2"
  const trials = 20;
  let held = 0;
  for (let trial = 0; trial < trials; trial++) {
    const column = () => Array.from({ length: 12 }, () => known(100 + normalDeviate(random), 1));
    const { rows } = rankKnown(inputOf({ a: column(), b: column(), c: column() })).overall;
    if (rows.every(({ low, high }) => low === 1 && high === 12)) held += 1;
  }
  // 0.95 less three standard errors, 3·√(0.95·0.05/20)
  expect(held / trials).toBeGreaterThanOrEqual(0.8);
});

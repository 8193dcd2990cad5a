import { normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { comparePairs } from '../../../api/measurement/ranking/pairs/compare-pairs.js';
import { competitionPlaces } from '../../../api/measurement/ranking/places/competition-places.js';
import { chanceAhead, drawPlaces } from '../../../api/measurement/ranking/draws/draw-places.js';
import { overallScores } from '../../../api/measurement/ranking/places/overall-scores.js';
import { placeSets } from '../../../api/measurement/ranking/pairs/place-sets.js';
import { named, referenceCases } from '../support/reference-cases.js';
import { independent } from './ranking-fixtures.js';

const ranking = referenceCases('ranking');
const DRAWS = 40_000;
const within = (p: number): number => 4 * Math.sqrt((p * (1 - p)) / DRAWS) + 1e-4;

function drawn(mu: readonly number[], sd: readonly number[]) {
  const { goodness, errors } = independent(mu, sd);
  return drawPlaces(goodness, errors);
}

/** Share of the draws in which each entry has each place. */
function placeShares(mu: readonly number[], sd: readonly number[]): number[][] {
  const n = mu.length;
  const shares = mu.map(() => mu.map(() => 0));
  drawn(mu, sd).forEach((place, at) => (shares[at % n]![place - 1]! += 1 / DRAWS));
  return shares;
}

test.each(['K05-two-normals', 'K16-two-normals'])('%s: P(X > Y) = Φ((µx − µy)/√(σx² + σy²))', (id) => {
  const { inputs, expected } = ranking[id]!;
  (inputs.rows as number[][]).forEach(([mx, sx, my, sy], row) => {
    const p = expected.p_first_greater[row] as number;
    expect(Math.abs(chanceAhead(drawn([mx!, my!], [sx!, sy!]), 2, 0, 1) - p)).toBeLessThan(within(p));
  });
});

test.each(['K06-iid-symmetry', 'K08-four-lines'])('%s: chances of every place', (id) => {
  const { inputs, expected } = ranking[id]!;
  const shares = placeShares(inputs.mu, inputs.sd);
  expected.rank_probabilities.forEach((row: number[], i: number) => {
    row.forEach((p, place) => expect(Math.abs(shares[i]![place]! - p)).toBeLessThan(within(p)));
  });
});

test(named(ranking['K07-equal-means-unequal-sd']!), () => {
  const { inputs, expected } = ranking['K07-equal-means-unequal-sd']!;
  placeShares(inputs.mu, inputs.sd).forEach((row, i) => {
    expect(Math.abs(row[0]! - expected.p_first[i])).toBeLessThan(within(expected.p_first[i]));
    expect(Math.abs(row[2]! - expected.p_last[i])).toBeLessThan(within(expected.p_last[i]));
    expect(row.reduce((sum, p, place) => sum + p * (place + 1), 0)).toBeCloseTo(expected.expected_rank[i], 1);
  });
});

test(named(ranking['K04-borda']!), () => {
  const { inputs, expected } = ranking['K04-borda']!;
  const names = Object.keys(expected.borda);
  const categories = (inputs.orders as string[][]).map((order) => ({
    direction: 'less' as const,
    weight: '1',
    places: names.map((name) => order.indexOf(name) + 1),
    values: names.map(() => '0'),
  }));
  const sums = overallScores(categories, 'sumOfPlaces').map(Number);
  expect(Object.fromEntries(names.map((name, i) => [name, sums[i]]))).toEqual(expected.rank_sum);
  // Borda counts are the sum of places turned round.
  expect(Object.fromEntries(names.map((name, i) => [name, inputs.orders.length * names.length - sums[i]!]))).toEqual(expected.borda);
  expect(names[sums.indexOf(Math.min(...sums))]).toBe(expected.winner);
});

describe(named(ranking['K09-csranks-pisa']!), () => {
  const { inputs, expected } = ranking['K09-csranks-pisa']!;
  const places = competitionPlaces(inputs.estimate.map(String), 'more');
  const rows = placeSets(comparePairs(independent(inputs.estimate, inputs.se), 0.95).isAhead, places);

  test('places', () => expect(places).toEqual(expected.rank));

  test('place intervals lie within those published, which judge every pair by all that are open, and are hardly narrower', () => {
    let narrower = 0;
    rows.forEach(({ low, high }, i) => {
      expect(low).toBeGreaterThanOrEqual(expected.simultaneous_L[i]);
      expect(high).toBeLessThanOrEqual(expected.simultaneous_U[i]);
      narrower += low - expected.simultaneous_L[i] + expected.simultaneous_U[i] - high;
    });
    expect(narrower / rows.length).toBeLessThan(1);
  });

  test('the countries that can be among the first five', () => {
    const found = (inputs.names as string[]).filter((_, i) => rows[i]!.low <= 5);
    expect(found.filter((name) => ![...expected.top5_confidence_set, ...expected.top5_borderline].includes(name))).toEqual([]);
    expect(found.length).toBeGreaterThanOrEqual(expected.top5_confidence_set.length - 1);
  });
});

test(named(ranking['K10-bonferroni-rank-sets']!), () => {
  const { inputs, expected } = ranking['K10-bonferroni-rank-sets']!;
  const n = inputs.estimate.length as number;
  const z = normalQuantile(1 - inputs.alpha / (n * (n - 1)));
  expect(Math.abs(z / expected.z - 1)).toBeLessThanOrEqual(1e-9);
  // With one draw of z standard deviations per pair in place of the drawn quantile, max-t becomes Bonferroni.
  const table = independent(inputs.estimate, inputs.se);
  const s = table.differenceUncertainty;
  const isAhead = new Uint8Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) if (i !== j && (inputs.estimate[i] - inputs.estimate[j]) / s[i * n + j]! > z) isAhead[i * n + j] = 1;
  }
  const sets = placeSets(isAhead, [1, 2, 3, 4, 5, 6]);
  expect(sets.map(({ low }) => low)).toEqual(expected.L);
  expect(sets.map(({ high }) => high)).toEqual(expected.U);
  // Max-t draws are never wider than Bonferroni.
  const comparison = comparePairs(table, 0.95);
  expect(comparison.criticalValue).toBeLessThan(z + 0.03);
  placeSets(comparison.isAhead, [1, 2, 3, 4, 5, 6]).forEach(({ low, high }, i) => {
    expect(low).toBeGreaterThanOrEqual(expected.L[i]);
    expect(high).toBeLessThanOrEqual(expected.U[i]);
  });
});

import { normalDeviate } from '../../../api/measurement/random/normal-deviate.js';
import { randomStream } from '../../../api/measurement/random/random-stream.js';
import { comparePairs } from '../../../api/measurement/ranking/pairs/compare-pairs.js';
import { couldBeFirst } from '../../../api/measurement/ranking/pairs/could-be-first.js';
import { largestTileQuantiles } from '../../../api/measurement/ranking/pairs/largest-scores.js';
import type { PairScales } from '../../../api/measurement/ranking/pairs/largest-scores.js';
import { normalScore, studentOfScore } from '../../../api/measurement/ranking/pairs/normal-score.js';
import { independent } from './ranking-fixtures.js';

const all = (n: number, value: number): Float64Array => Float64Array.from({ length: n * n }, (_, at) => (at % (n + 1) === 0 ? 0 : value));

const everybody = (n: number): Int32Array => Int32Array.from({ length: n }, (_, i) => i);

/** Over all pairs: one group that holds everybody. */
const largestScoreQuantile = (errors: Float64Array, pairs: PairScales, level: number): number =>
  largestTileQuantiles(errors, pairs, everybody(pairs.n), [pairs.n], level)[0]!;

/** Looks at every pair of every group. */
function plainQuantile(errors: Float64Array, { n, precision, degreesOfFreedom }: PairScales, size: number, level: number): number {
  const tiles = Math.floor(n / size);
  const largest = Array.from({ length: errors.length / n }, (_, draw) => {
    const first = draw % 2 === 0 ? 0 : n - tiles * size;
    const tileOf = (i: number): number => Math.floor((i - first) / size);
    let z = 0;
    for (let i = first; i < first + tiles * size; i++)
      for (let j = first; j < first + tiles * size; j++)
        if (tileOf(i) === tileOf(j))
          z = Math.max(
            z,
            normalScore((errors[draw * n + i]! - errors[draw * n + j]!) * precision[i * n + j]!, degreesOfFreedom[i * n + j]!),
          );
    return z;
  }).sort((a, b) => a - b);
  return largest[Math.min(largest.length, Math.ceil(level ** ((tiles * size) / n) * (largest.length + 1))) - 1]!;
}

test('looking once at what lies above the smallest groups gives what looking at all pairs of all groups gives', () => {
  const random = randomStream([3, 1, 4, 1]);
  for (const n of [2, 3, 12]) {
    const errors = Float64Array.from({ length: 299 * n }, (_, at) => (1 + (at % n)) * normalDeviate(random));
    const precision = Float64Array.from({ length: n * n }, (_, at) =>
      at % (n + 1) === 0 || at % 7 === 3 ? 0 : 0.2 + random.nextUniform(),
    );
    const degreesOfFreedom = Float64Array.from({ length: n * n }, () =>
      random.nextUniform() < 0.3 ? Infinity : 1 + 20 * random.nextUniform(),
    );
    const pairs = { n, precision, degreesOfFreedom };
    const sizes = [2, 3, 5, 8, 12].filter((size) => size <= n);
    for (const level of [0.5, 0.9, 0.95, 0.999]) {
      let most = 0;
      const plain = sizes.map((size) => (most = Math.max(most, plainQuantile(errors, pairs, size, level))));
      expect(largestTileQuantiles(errors, pairs, everybody(n), sizes, level)).toEqual(plain);
    }
  }
});

// Φ⁻¹(F_t(t; ν)), computed with R 4.2.2: qnorm(pt(t, ν))
test.each([
  [2.2281, 10, 1.959936],
  [6, 5, 3.113929],
])('the normal score of t = %d with %d degrees is %d', (t, degrees, expected) => {
  expect(Math.abs(normalScore(t, degrees) - expected)).toBeLessThan(0.03);
  expect(normalScore(-t, degrees)).toBe(-normalScore(t, degrees));
  expect(studentOfScore(normalScore(t, degrees), degrees)).toBeCloseTo(t, 9);
});

// Studentized range of 6 groups, ν = ∞: q(0.95) = 4.030, over √2 (table in any textbook; R: qtukey(.95, 6, Inf)/sqrt(2) = 2.8497).
test('with equal normal errors the first critical value is that of Tukey’s test', () => {
  const table = independent([0, 0, 0, 0, 0, 0], [1, 1, 1, 1, 1, 1]);
  expect(comparePairs(table, 0.95).firstCritical!).toBeCloseTo(2.85, 1);
});

/**
 * Games and Howell's test on the open data set InsectSprays (Beall 1942, in R's datasets): means, variances, n = 12; p from R 4.2.2,
 * ptukey(t·√2, 6, ν, lower = FALSE) with Welch's t and ν.
 */
test('a pair’s joint probability is that of Games and Howell', () => {
  const means = [14.5, 15.333333, 2.083333, 4.916667, 3.5, 16.666667];
  const variances = [22.272727, 18.242424, 3.901515, 6.265152, 3, 38.606061];
  const table = independent(
    means,
    variances.map((variance) => Math.sqrt(variance / 12)),
    new Array<number>(6).fill(11),
  );
  const precision = table.differenceUncertainty.map((s) => (s > 0 ? 1 / s : 0));
  const published = [
    [2, 3, 3.078215, 20.87185, 0.05566777],
    [2, 4, 1.86804, 21.63091, 0.4466121],
  ] as const;
  for (const [i, j, t, degrees, p] of published) {
    expect(table.degreesOfFreedom[i * 6 + j]!).toBeCloseTo(degrees, 3);
    const atP = largestScoreQuantile(table.errors, { n: 6, precision, degreesOfFreedom: table.degreesOfFreedom }, 1 - p);
    expect(Math.abs(atP - normalScore(t, degrees))).toBeLessThan(0.08);
  }
  const { isAhead } = comparePairs(table, 0.95);
  const told = [...isAhead].reduce((sum, one) => sum + one, 0);
  // Nine pairs below p = 0.001; C and D (p = 0.056 in one step) are told apart once those have left.
  expect(told).toBe(10);
  expect(isAhead[3 * 6 + 2]).toBe(1);
});

test('whoever is told apart from all others leaves the error rate to the rest', () => {
  const far = independent([60, 50, 0, 0], [1, 1, 1, 1]);
  const { firstCritical, criticalValue } = comparePairs(far, 0.95);
  // One pair is left, in both directions: the two-sided 95 % point.
  expect(criticalValue!).toBeCloseTo(1.96, 1);
  expect(firstCritical!).toBeGreaterThan(2.5);
  const between = independent([60, 50, 2.2 * Math.SQRT2, 0], [1, 1, 1, 1]);
  expect(comparePairs(between, 0.95).isAhead[2 * 4 + 3]).toBe(1);
});

/**
 * Ryan, Einot, Gabriel and Welsch: a group of p of m equals is judged at 1 − 0.95^(p/m), by the studentized range over √2. R 4.2.2, ν = ∞: qtukey(.95^(p/12), p, Inf)/sqrt(2), by
 * integration of p·φ(x)·(Φ(x + w) − Φ(x))^(p − 1).
 */
test.each([
  [4, 12, 2.9465],
  [3, 12, 2.8347],
  [6, 12, 3.0795],
])('groups far apart: within a group of %d of %d a difference of %d counts', (size, m, critical) => {
  const centres = Array.from({ length: m / size }, (_, group) => 100 * group);
  const aheadAt = (factor: number): number => {
    const values = centres.flatMap((centre) =>
      Array.from({ length: size }, (_, k) => centre + (k === 0 ? factor * critical * Math.SQRT2 : 0)),
    );
    const { isAhead } = comparePairs(independent(values, new Array<number>(m).fill(1)), 0.95);
    return isAhead[1]!;
  };
  expect(aheadAt(0.96)).toBe(0);
  expect(aheadAt(1.04)).toBe(1);
});

test('what follows from two statements is told too', () => {
  // The first and the last have so wide a difference of their own that they are not told apart by it.
  const table = independent([20, 10, 0], [1, 1, 1]);
  table.differenceUncertainty[2] = table.differenceUncertainty[6] = 100;
  expect(comparePairs(table, 0.95).isAhead[2]).toBe(1);
});

test('one entry with hardly any degrees of freedom does not decide for the others', () => {
  const goodness = [1.4, 0, 0, 0, 0, 0, 5.2, 0];
  const calm = comparePairs(independent(goodness, new Array<number>(8).fill(1)), 0.95);
  const wild = comparePairs(independent(goodness, new Array<number>(8).fill(1), [3, ...new Array<number>(7).fill(Infinity)]), 0.95);
  expect(Math.abs(wild.firstCritical! - calm.firstCritical!)).toBeLessThan(0.2);
  for (const other of [1, 2, 3, 4, 5, 7]) expect(wild.isAhead[6 * 8 + other]).toBe(1);
  expect(calm.isAhead[6 * 8]).toBe(1);
  // By its own tail that entry is not told apart.
  expect(wild.isAhead[6 * 8]).toBe(0);
});

test('pairs without uncertainty are told apart by any difference, and equal ones by none', () => {
  const table = {
    goodness: Float64Array.of(2, 2, 1),
    errors: new Float64Array(30),
    differenceUncertainty: new Float64Array(9),
    degreesOfFreedom: all(3, Infinity),
  };
  const comparison = comparePairs(table, 0.95);
  expect(comparison.criticalValue).toBeNull();
  expect([...comparison.isAhead]).toEqual([0, 0, 1, 0, 0, 1, 0, 0, 0]);
  expect([...couldBeFirst(table, comparison, 0.95)]).toEqual([1, 1, 0]);
});

/**
 * Multiple comparisons with the best (Hsu 1984) use Dunnett's one-sided points; with equal known variances (correlation ½), by integration of Φ(x + c√2)^k φ(x) (checked against Dunnett 1955,
 * table 1a, ν = ∞: 2.06, 2.16 and 2.42 at 95 %). A tenth of the error rate goes into the first step, so that 95.5 % are left.
 */
test.each([
  [3, 2.108],
  [4, 2.205],
  [9, 2.46],
])('among %d others beside it an entry could be first up to Dunnett’s %d', (others, critical) => {
  expect(setAt(critical - 0.05, others, 0)).toBe(1);
  expect(setAt(critical + 0.05, others, 0)).toBe(0);
});

/** Romano, Shaikh & Wolf 2014: who is surely behind does not raise what an entry is judged by; one rival is left: Φ⁻¹(0.955) = 1.695. */
test('an entry is judged by those that could rival it alone', () => {
  expect(setAt(1.695 - 0.05, 9, -9)).toBe(1);
  expect(setAt(1.695 + 0.05, 9, -9)).toBe(0);
  // One that may well be as good as itself still counts.
  expect(setAt(2.2, 9, -1)).toBe(1);
});

/** Whether an entry could be first that one other leads by a score, among others that stand so far from it. */
function setAt(deficit: number, others: number, rest: number): number {
  const goodness = [deficit * Math.SQRT2, 0, ...new Array<number>(others - 1).fill(rest)];
  const table = independent(goodness, new Array<number>(others + 1).fill(1));
  return couldBeFirst(table, comparePairs(table, 0.95), 0.95)[1]!;
}

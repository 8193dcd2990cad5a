import { tQuantile } from '../../../api/measurement/distributions/t-distribution.js';
import { fiellerInterval } from '../../../api/measurement/figures/fieller-interval.js';
import { ratioInputs } from '../../../api/measurement/figures/ratio-inputs.js';
import { ratioTest } from '../support/formulas/ratio-test.js';
import { retentionAgainstWhole, retentionFigures, retentionPercent } from '../../../api/measurement/figures/retention.js';
import type { FiellerInterval } from '../../../api/measurement/figures/fieller-interval.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('ratio');

function bounded(interval: FiellerInterval): [number, number] {
  if (interval.kind !== 'bounded') throw new Error(`expected a bounded interval, found ${interval.kind}`);
  return [interval.low, interval.high];
}

test(named(cases['F01-fieller-asat']!), () => {
  const one = cases['F01-fieller-asat']!;
  const { numerator, denominator, level } = one.inputs;
  const pooled = fiellerInterval(numerator, denominator, { level, variance: 'pooled' });
  const separate = fiellerInterval(numerator, denominator, { level });
  const { t, pLess: p } = ratioTest(numerator, denominator, 1.25, 'pooled');
  const { a, b } = ratioInputs(numerator, denominator, 'pooled');
  expectReference(one, {
    pooled: { ratio: pooled.ratio, df: pooled.degreesOfFreedom, g: pooled.g, ci: bounded(pooled), mean_num: a, mean_den: b },
    satterthwaite: { ratio: separate.ratio, df: separate.degreesOfFreedom, ci: bounded(separate) },
    pooled_90pct_ci: bounded(fiellerInterval(numerator, denominator, { level: 0.9, variance: 'pooled' })),
    'test_rho_1.25_less': { t, p },
  });
});

test(named(cases['F02-fieller-unbounded']!), () => {
  const one = cases['F02-fieller-unbounded']!;
  const found = fiellerInterval(one.inputs.numerator, one.inputs.denominator, { level: one.inputs.level, variance: 'pooled' });
  expect(found.kind).toBe('exclusive');
  if (found.kind !== 'exclusive') return;
  expectReference(one, { g: found.g, g_greater_than_1: found.g > 1, roots: [found.upTo, found.from] });
  expect(found).not.toHaveProperty('low');
  expect(found).not.toHaveProperty('high');
});

test(named(cases['F03-fieller-summary']!), () => {
  const one = cases['F03-fieller-summary']!;
  const { inputs } = one;
  const found = fiellerInterval(
    { mean: inputs.mean_num, sd: inputs.sd_num, n: inputs.n_num },
    { mean: inputs.mean_den, sd: inputs.sd_den, n: inputs.n_den },
    { variance: 'pooled' },
  );
  // To first order (JCGM 100 5.1.6), for contrast: symmetric, where Fieller's interval is not.
  const pooled = Math.sqrt((inputs.sd_num ** 2 + inputs.sd_den ** 2) / 2);
  const relative = (pooled / Math.sqrt(inputs.n_num)) * Math.hypot(1 / inputs.mean_num, 1 / inputs.mean_den);
  const halfWidth = found.ratio * relative * tQuantile(0.975, inputs.n_num + inputs.n_den - 2);
  expectReference(one, {
    ratio: found.ratio,
    g: found.g,
    fieller_95: bounded(found),
    delta_method_95: [found.ratio - halfWidth, found.ratio + halfWidth],
  });
});

describe('the three shapes', () => {
  const shape = (meanA: number, meanB: number) => fiellerInterval({ mean: meanA, sd: 1, n: 4 }, { mean: meanB, sd: 1, n: 4 });

  test('a clear denominator bounds the ratio, an unclear one does not', () => {
    expect(shape(10, 20).kind).toBe('bounded');
    expect(shape(10, 0.3).kind).toBe('exclusive');
    expect(shape(0.1, 0.1)).toMatchObject({ kind: 'whole-line' });
  });

  test('every limit solves (a − ρb)² = t²(u_a² + ρ²u_b²)', () => {
    for (const found of [shape(10, 20), shape(10, 0.3)]) {
      const limits = found.kind === 'bounded' ? [found.low, found.high] : found.kind === 'exclusive' ? [found.upTo, found.from] : [];
      const [a, b] = found.kind === 'bounded' ? [10, 20] : [10, 0.3];
      expect(limits).toHaveLength(2);
      const tSquared = (found.g * b * b) / 0.25;
      for (const limit of limits) expect((a - limit * b) ** 2 / (tSquared * 0.25 * (1 + limit * limit))).toBeCloseTo(1, 9);
    }
  });

  test('samples without spread give an interval of no width', () => {
    expect(fiellerInterval([5, 5, 5], [10, 10, 10])).toMatchObject({
      kind: 'bounded',
      ratio: 0.5,
      low: 0.5,
      high: 0.5,
      g: 0,
      degreesOfFreedom: 4,
    });
  });

  test('a scale of both leaves the ratio; a swap inverts it; order does not matter', () => {
    const [treated, straight] = [
      [38, 41, 36, 40],
      [52, 55, 50, 53],
    ];
    const base = bounded(fiellerInterval(treated!, straight!));
    const scaled = bounded(
      fiellerInterval(
        treated!.map((v) => v * 4.448).reverse(),
        straight!.map((v) => v * 4.448),
      ),
    );
    expect(scaled[0]).toBeCloseTo(base[0], 12);
    expect(scaled[1]).toBeCloseTo(base[1], 12);
    const swapped = bounded(fiellerInterval(straight!, treated!, { variance: 'pooled' }));
    const pooled = bounded(fiellerInterval(treated!, straight!, { variance: 'pooled' }));
    expect(1 / swapped[1]).toBeCloseTo(pooled[0], 12);
  });
});

describe('retention', () => {
  // Common practice: worked figures of the trade, rounded to 0.01 %.
  test.each([
    [12.08, 12.48, 96.79],
    [89.2, 141.36, 63.1],
    [18.52, 19.59, 94.54],
  ])('%d of %d is %d %% (common practice)', (treated, straight, percent) => {
    expect(retentionPercent(treated, straight)).toBeCloseTo(percent, 2);
  });

  test('above 100 % is reported as found, and 100 % inside the interval is said', () => {
    expect(retentionPercent(105, 100)).toBe(105);
    const near = retentionFigures([99, 103, 104, 100], [98, 101, 102, 99]);
    expect(near.retentionPercent).toBeGreaterThan(100);
    expect(near.againstWhole).toBe('holds-100');
    expect(retentionFigures([150, 151, 152], [100, 101, 99]).againstWhole).toBe('above');
    expect(retentionFigures([50, 51, 52], [100, 101, 99]).againstWhole).toBe('below');
  });

  test('a set without two limits is no verdict', () => {
    expect(retentionAgainstWhole(fiellerInterval([10, 11, 12], [0.1, 3, -2]))).toBe('not-bounded');
    expect(retentionAgainstWhole({ kind: 'whole-line', ratio: 1, degreesOfFreedom: 4, g: 3 })).toBe('not-bounded');
  });
});

describe('bad input', () => {
  test('a denominator of zero', () => {
    expect(errorCode(() => fiellerInterval([1, 2, 3], [-1, 0, 1]))).toBe('figures/zero-denominator');
    expect(errorCode(() => fiellerInterval({ mean: 1e300, sd: 0, n: 3 }, { mean: 1e-300, sd: 0, n: 3 }))).toBe('figures/zero-denominator');
    expect(errorCode(() => fiellerInterval({ mean: 1e200, sd: 1, n: 3 }, { mean: 1e200, sd: 1, n: 3 }))).toBe('measurement/not-a-number');
    expect(errorCode(() => ratioTest([1, 2], [0, 0], 1))).toBe('figures/zero-denominator');
    expect(errorCode(() => retentionPercent(1, 0))).toBe('figures/not-positive');
  });

  test('one reading, NaN, negative forces', () => {
    expect(errorCode(() => fiellerInterval([1], [1, 2]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => fiellerInterval([1, 2], { mean: 1, sd: 1, n: 1 }))).toBe('measurement/too-few-readings');
    expect(errorCode(() => fiellerInterval([1, NaN], [1, 2]))).toBe('measurement/not-a-number');
    expect(errorCode(() => fiellerInterval([1, 2], [1, 2], { level: 95 }))).toBe('distributions/out-of-domain');
    expect(errorCode(() => retentionPercent(-1, 2))).toBe('figures/negative');
    expect(errorCode(() => retentionFigures([-1, 2], [1, 2]))).toBe('figures/negative');
    expect(errorCode(() => retentionFigures([1, 2], [-1, 2]))).toBe('figures/not-positive');
  });

  test('a test without any spread', () => {
    expect(errorCode(() => ratioTest([1, 1], [2, 2], 0.4))).toBe('measurement/no-spread');
  });
});

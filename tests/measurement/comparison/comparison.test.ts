import { equivalenceTest } from '../support/formulas/equivalence-test.js';
import { pairedTest, welchTest } from '../support/formulas/welch-test.js';
import type { DifferenceTest } from '../support/formulas/welch-test.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('ratio');
const shown = ({ t, degreesOfFreedom: df, p, low, high }: DifferenceTest) => ({ t, df, p, ci95: [low, high] });

test(named(cases['F04-welch-sleep']!), () => {
  const { group1, group2 } = cases['F04-welch-sleep']!.inputs;
  const { t, p, ci95 } = shown(pairedTest(group1, group2));
  expectReference(cases['F04-welch-sleep']!, { welch: shown(welchTest(group1, group2)), paired: { t, p, ci95 } });
});

test(named(cases['F05-tost-plantgrowth']!), () => {
  const { x, y, margin, alpha } = cases['F05-tost-plantgrowth']!.inputs;
  const found = equivalenceTest(x, y, margin, alpha);
  expectReference(cases['F05-tost-plantgrowth']!, {
    diff: found.difference,
    df: found.degreesOfFreedom,
    p_lower: found.pLower,
    p_upper: found.pUpper,
    ci90: [found.low, found.high],
    equivalent: found.isEquivalent,
  });
});

const first = [162.4, 158.9, 171.3, 165.0];
const second = [160.2, 168.8, 159.5];

describe('properties', () => {
  test('shift, scale, order and swap', () => {
    const base = welchTest(first, second);
    const changed = welchTest(
      [...first].reverse().map((v) => v * 2 + 9),
      second.map((v) => v * 2 + 9),
    );
    expect(changed.t).toBeCloseTo(base.t, 10);
    expect(changed.p).toBeCloseTo(base.p, 10);
    expect(changed.difference).toBeCloseTo(2 * base.difference, 10);
    const swapped = welchTest(second, first);
    expect(swapped.t).toBeCloseTo(-base.t, 12);
    expect(swapped.low).toBeCloseTo(-base.high, 10);
  });

  test('equal means give t = 0 and p = 1', () => {
    expect(welchTest([1, 2, 3], [3, 2, 1])).toMatchObject({ difference: 0, t: 0, p: 1 });
  });

  test('equivalent exactly when the 1 − 2α interval lies inside the margins', () => {
    const { low, high } = equivalenceTest(first, second, [-100, 100]);
    expect(equivalenceTest(first, second, [low - 1e-6, high + 1e-6]).isEquivalent).toBe(true);
    expect(equivalenceTest(first, second, [low + 1e-6, high + 1]).isEquivalent).toBe(false);
    expect(equivalenceTest(first, second, [low - 1, high - 1e-6]).isEquivalent).toBe(false);
  });

  test('figures serve as well as readings', () => {
    const figures = welchTest({ mean: 2, sd: 1, n: 3 }, { mean: 5, sd: 1, n: 3 });
    expect(figures.t).toBeCloseTo(welchTest([1, 2, 3], [4, 5, 6]).t, 12);
  });
});

describe('bad input', () => {
  test('one reading, no spread, NaN, unpaired readings', () => {
    expect(errorCode(() => welchTest([1], [1, 2]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => welchTest([1, 1], [2, 2]))).toBe('measurement/no-spread');
    expect(errorCode(() => welchTest([1, NaN], [2, 3]))).toBe('measurement/not-a-number');
    expect(errorCode(() => pairedTest([1, 2], [1]))).toBe('comparison/unequal-length');
    expect(errorCode(() => pairedTest([1, 2, 3], [2, 3, 4]))).toBe('measurement/no-spread');
    expect(errorCode(() => pairedTest([1], [2]))).toBe('measurement/too-few-readings');
  });

  test('margins the wrong way round, a level that is no level', () => {
    expect(errorCode(() => equivalenceTest(first, second, [1, -1]))).toBe('comparison/bad-margins');
    expect(errorCode(() => equivalenceTest(first, second, [NaN, 1]))).toBe('comparison/bad-margins');
    expect(errorCode(() => equivalenceTest(first, second, [-1, 1], 0.5))).toBe('distributions/out-of-domain');
  });
});

import { compensatedSum } from '../../../api/measurement/summary/compensated-sum.js';
import { meanConfidenceInterval } from '../../../api/measurement/summary/confidence-interval.js';
import { lag1Autocorrelation } from '../support/formulas/lag1-autocorrelation.js';
import { mean } from '../../../api/measurement/summary/mean.js';
import { median } from '../../../api/measurement/summary/median.js';
import { sampleSummary } from '../../../api/measurement/summary/sample-summary.js';
import { standardDeviation } from '../../../api/measurement/summary/standard-deviation.js';
import { summarise } from '../../../api/measurement/summary/summarise.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = Object.values(referenceCases('summary'));

function valuesOf(inputs: any): number[] {
  if (inputs.values) return inputs.values;
  if (inputs.digits) return [...inputs.digits].map(Number);
  return [inputs.first, ...Array.from({ length: inputs.repeats }, () => inputs.pair).flat()];
}

test.each(cases.map((one) => [named(one), one] as const))('%s', (_name, one) => {
  const values = valuesOf(one.inputs);
  expect(values).toHaveLength(one.inputs.n);
  expectReference(one, { mean: mean(values), sd_n_minus_1: standardDeviation(values), lag1_autocorrelation: lag1Autocorrelation(values) });
});

// 0.1 is not a binary number; only exact or compensated work brings the sum of ten of them to 1.
test('a compensated sum keeps what plain addition loses', () => {
  expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2);
  expect(compensatedSum(Array.from({ length: 10 }, () => 0.1))).toBe(1);
  expect(compensatedSum([])).toBe(0);
});

const forcesN = [162.4, 158.9, 171.3, 165.0, 160.2, 168.8, 159.5, 163.1, 166.6, 161.7];

describe('figures of a set', () => {
  test('all of them', () => {
    const found = summarise([4, 1, 3, 2]);
    expect(found).toMatchObject({ n: 4, mean: 2.5, min: 1, max: 4, range: 3, median: 2.5 });
    expect(found.sd).toBeCloseTo(Math.sqrt(5 / 3), 14);
    expect(found.cvPercent).toBeCloseTo(100 * (Math.sqrt(5 / 3) / 2.5), 12);
  });

  test('one reading shows no spread: null, not zero and not NaN', () => {
    expect(summarise([7])).toEqual({ n: 1, mean: 7, sd: null, cvPercent: null, min: 7, max: 7, range: 0, median: 7 });
  });

  test('equal readings have spread zero', () => {
    expect(summarise([0.1, 0.1, 0.1])).toMatchObject({ sd: 0, cvPercent: 0, range: 0 });
    expect(meanConfidenceInterval([5, 5, 5])).toEqual({ low: 5, high: 5, halfWidth: 0 });
  });

  test('a mean at or below zero has no coefficient of variation', () => {
    expect(summarise([-1, 1]).cvPercent).toBeNull();
    expect(summarise([-3, -1]).cvPercent).toBeNull();
  });

  // scipy 1.17.1, stats.t.interval(0.95, 9, mean, sem): recomputed
  test('confidence interval of the mean', () => {
    const { low, high, halfWidth } = meanConfidenceInterval(forcesN);
    expect(low).toBeCloseTo(160.8021952003089, 9);
    expect(high).toBeCloseTo(166.6978047996911, 9);
    expect(high - low).toBeCloseTo(2 * halfWidth, 10);
    expect(meanConfidenceInterval(forcesN, 0.99).halfWidth).toBeGreaterThan(halfWidth);
  });

  test('a sample may be given by its figures', () => {
    expect(sampleSummary([1, 2, 3], 'x')).toEqual({ mean: 2, sd: 1, n: 3 });
    const figures = { mean: 2, sd: 1, n: 3 };
    expect(sampleSummary(figures, 'x')).toBe(figures);
    expect(errorCode(() => sampleSummary({ mean: 2, sd: 1, n: 1 }, 'x'))).toBe('measurement/too-few-readings');
    expect(errorCode(() => sampleSummary({ mean: 2, sd: 1, n: 2.5 }, 'x'))).toBe('measurement/too-few-readings');
    expect(errorCode(() => sampleSummary({ mean: NaN, sd: 1, n: 3 }, 'x'))).toBe('measurement/not-a-number');
    expect(errorCode(() => sampleSummary({ mean: 2, sd: -1, n: 3 }, 'x'))).toBe('measurement/not-a-number');
  });
});

describe('properties', () => {
  const base = summarise(forcesN);

  test('a shift moves the mean and median and leaves the spread', () => {
    const shifted = summarise(forcesN.map((value) => value + 1e6));
    expect(shifted.mean - 1e6).toBeCloseTo(base.mean, 8);
    expect(shifted.median - 1e6).toBeCloseTo(base.median, 8);
    expect(shifted.sd!).toBeCloseTo(base.sd!, 8);
    expect(shifted.range).toBeCloseTo(base.range, 8);
  });

  test('a scale multiplies all but n and CV', () => {
    const scaled = summarise(forcesN.map((value) => value * 4));
    expect(scaled.mean).toBe(base.mean * 4);
    expect(scaled.sd).toBe(base.sd! * 4);
    expect(scaled.cvPercent).toBeCloseTo(base.cvPercent!, 12);
  });

  test('the order does not matter, except to the lag', () => {
    const reversed = [...forcesN].reverse();
    expect(summarise(reversed).median).toBe(base.median);
    expect(summarise(reversed).mean).toBeCloseTo(base.mean, 13);
    expect(summarise(reversed).sd!).toBeCloseTo(base.sd!, 13);
    expect(lag1Autocorrelation([...forcesN].sort((a, b) => a - b))).not.toBeCloseTo(lag1Autocorrelation(forcesN), 2);
  });

  test('nothing is changed in place', () => {
    const frozen = Object.freeze([3, 1, 2]);
    expect(median(frozen)).toBe(2);
    expect(frozen).toEqual([3, 1, 2]);
  });
});

describe('bad input', () => {
  test('no readings, or one where two are needed', () => {
    expect(errorCode(() => summarise([]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => mean([]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => median([]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => standardDeviation([1]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => meanConfidenceInterval([1]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => lag1Autocorrelation([1]))).toBe('measurement/too-few-readings');
  });

  test.each([NaN, Infinity, -Infinity])('a reading of %p is refused', (bad) => {
    for (const run of [summarise, mean, median, standardDeviation, meanConfidenceInterval, lag1Autocorrelation]) {
      expect(errorCode(() => run([1, bad, 2]))).toBe('measurement/not-a-number');
    }
  });

  test('a sum beyond the number range is refused', () => {
    expect(errorCode(() => mean([1.7e308, 1.7e308]))).toBe('measurement/not-a-number');
  });

  test('a lag needs spread, an interval a level', () => {
    expect(errorCode(() => lag1Autocorrelation([2, 2, 2]))).toBe('measurement/no-spread');
    for (const level of [-1, 1, 95]) {
      expect(errorCode(() => meanConfidenceInterval([1, 2], level))).toBe('distributions/out-of-domain');
    }
  });
});

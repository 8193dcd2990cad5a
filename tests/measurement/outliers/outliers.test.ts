import { cochranCritical, cochranTest } from '../../../api/measurement/outliers/cochran-c.js';
import { dixonR10, dixonR10Critical } from '../support/formulas/dixon.js';
import type { DixonAlpha } from '../support/formulas/dixon.js';
import { doubleGrubbsCritical, doubleGrubbsTest } from '../../../api/measurement/outliers/double-grubbs.js';
import { generalisedEsd } from '../support/formulas/generalised-esd.js';
import { grubbsCritical, grubbsTest } from '../../../api/measurement/outliers/grubbs.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('outliers');

test(named(cases['O01-grubbs-uranium']!), () => {
  const one = cases['O01-grubbs-uranium']!;
  const { values, alpha } = one.inputs;
  const oneSided = grubbsTest(values, alpha, 'high');
  const twoSided = grubbsTest(values, alpha);
  expectReference(one, {
    suspect: values[oneSided.suspectIndex!],
    G: oneSided.statistic,
    critical_one_sided: oneSided.critical,
    critical_two_sided: twoSided.critical,
    outlier: oneSided.isOutlier,
  });
  expect(twoSided.isOutlier).toBe(true);
  // The p value is the level at which the critical value equals G.
  expect(grubbsCritical(values.length, one.expected.p_one_sided, 'high')).toBeCloseTo(one.expected.G, 6);
});

test(named(cases['O02-gesd-rosner']!), () => {
  const one = cases['O02-gesd-rosner']!;
  const { values, max_outliers: maxOutliers, alpha } = one.inputs;
  const found = generalisedEsd(values, maxOutliers, alpha);
  expectReference(one, {
    R: found.steps.map((step) => step.statistic),
    lambda: found.steps.map((step) => step.critical),
    removed_order: found.steps.map((step) => values[step.suspectIndex!]),
    number_of_outliers: found.outlierCount,
    outliers: found.outlierIndices.map((i) => values[i]),
  });
  // The first two steps are not significant: stopping there would find none.
  expect(found.steps[0]!.statistic).toBeLessThan(found.steps[0]!.critical);
  expect(found.steps[1]!.statistic).toBeLessThan(found.steps[1]!.critical);
});

test(named(cases['O03-grubbs-critical']!), () => {
  const { n } = cases['O03-grubbs-critical']!.inputs;
  expectReference(cases['O03-grubbs-critical']!, {
    one_sided_5pct: n.map((count: number) => grubbsCritical(count, 0.05, 'high')),
    two_sided_5pct: n.map((count: number) => grubbsCritical(count, 0.05)),
    two_sided_1pct: n.map((count: number) => grubbsCritical(count, 0.01)),
  });
});

test(named(cases['O04-cochran-critical']!), () => {
  const { p_groups: groups, n_per_group: sizes } = cases['O04-cochran-critical']!.inputs;
  const table = (alpha: number): Record<string, number[]> =>
    Object.fromEntries(sizes.map((size: number) => [size, groups.map((p: number) => cochranCritical(p, size, alpha))]));
  expectReference(cases['O04-cochran-critical']!, { '5pct': table(0.05), '1pct': table(0.01) });
});

test(named(cases['O05-dixon-r10']!), () => {
  const { n, one_sided_alpha: levels } = cases['O05-dixon-r10']!.inputs;
  const found = Object.fromEntries(
    n.map((count: number) => [count, levels.map((alpha: number) => dixonR10Critical(count, (2 * alpha) as DixonAlpha))]),
  );
  expectReference(cases['O05-dixon-r10']!, found);
});

test(named(cases['O06-dixon-example']!), () => {
  const one = cases['O06-dixon-example']!;
  const { values, suspect } = one.inputs;
  const found = dixonR10(values, 0.05);
  expect(values[found.suspectIndex!]).toBe(suspect);
  const sorted = [...values].sort((a: number, b: number) => a - b);
  const [gap, range] = [sorted[1] - sorted[0], sorted.at(-1) - sorted[0]];
  expect(found.statistic).toBeCloseTo(gap / range, 12);
  expectReference(one, {
    gap,
    range,
    Q: found.statistic,
    reject_90pct_two_sided: dixonR10(values, 0.1).isOutlier,
    reject_95pct_two_sided: found.isOutlier,
  });
});

test(named(cases['O07-grubbs-double-glucose']!), () => {
  const one = cases['O07-grubbs-double-glucose']!;
  const { lab_means: means } = one.inputs;
  const found = doubleGrubbsTest(means);
  expectReference(one, {
    G_high: grubbsTest(means, 0.05, 'high').statistic,
    G_critical_two_sided_5pct: grubbsTest(means).critical,
    S2_two_smallest: found.ratioWithoutTwoSmallest,
    S2_two_largest: found.ratioWithoutTwoLargest,
    double_critical_5pct: found.critical,
    double_critical_1pct: doubleGrubbsCritical(means.length, 0.01),
  });
  expect(found).toMatchObject({ areTwoLargestOutliers: false, areTwoSmallestOutliers: false });
});

test.each(['O08-grubbs-double-critical', 'O18-grubbs-double-critical'])('%s (ISO 5725-2:1994 table 5, Monte-Carlo)', (id) => {
  const { p } = cases[id]!.inputs;
  expectReference(cases[id]!, {
    '5pct': p.map((n: number) => doubleGrubbsCritical(n, 0.05)),
    '1pct': p.map((n: number) => doubleGrubbsCritical(n, 0.01)),
  });
});

describe('what each test finds', () => {
  const clean = [10.1, 9.8, 10.3, 10.0, 9.9, 10.2];

  test('Grubbs looks only where it is told to', () => {
    const low = [...clean, 5];
    expect(grubbsTest(low)).toMatchObject({ suspectIndex: 6, isOutlier: true });
    expect(grubbsTest(low, 0.05, 'low')).toMatchObject({ suspectIndex: 6, isOutlier: true });
    expect(grubbsTest(low, 0.05, 'high')).toMatchObject({ suspectIndex: 2, isOutlier: false });
    expect(grubbsTest(clean).isOutlier).toBe(false);
  });

  test('two outliers at one end hide from the single test and not from the double one', () => {
    const masked = [...clean, 20, 20.1];
    expect(grubbsTest(masked).isOutlier).toBe(false);
    expect(doubleGrubbsTest(masked)).toMatchObject({ areTwoLargestOutliers: true, areTwoSmallestOutliers: false });
    expect(doubleGrubbsTest(masked.map((value) => -value))).toMatchObject({ areTwoLargestOutliers: false, areTwoSmallestOutliers: true });
    expect(generalisedEsd(masked, 3).outlierIndices.sort()).toEqual([6, 7]);
  });

  test('Dixon takes the end with the wider gap', () => {
    expect(dixonR10([1, 2, 3, 20])).toMatchObject({ suspectIndex: 3, isOutlier: true });
    expect(dixonR10([20, 18, 19, 1])).toMatchObject({ suspectIndex: 3, isOutlier: true });
    expect(dixonR10(clean).isOutlier).toBe(false);
  });

  test('Cochran finds the wide group', () => {
    const found = cochranTest([1, 1, 1, 5], 3);
    expect(found).toMatchObject({ suspectIndex: 3, isOutlier: true });
    expect(found.statistic).toBeCloseTo(25 / 28, 14);
    expect(cochranTest([1, 1.1, 0.9, 1.2], 3).isOutlier).toBe(false);
    expect(cochranTest([1e-200, 1e-200], 3).statistic).toBe(0.5);
  });

  test('shift, scale and order change no verdict', () => {
    const values = [162.4, 158.9, 171.3, 165.0, 160.2, 130.1];
    const base = grubbsTest(values);
    for (const changed of [values.map((value) => value * 3 + 1000), [...values].reverse()]) {
      const found = grubbsTest(changed);
      expect(found.statistic).toBeCloseTo(base.statistic, 10);
      expect(changed[found.suspectIndex!]).toBe(Math.min(...changed));
      expect(dixonR10(changed).statistic).toBeCloseTo(dixonR10(values).statistic, 10);
      expect(doubleGrubbsTest(changed).ratioWithoutTwoSmallest).toBeCloseTo(doubleGrubbsTest(values).ratioWithoutTwoSmallest, 10);
      expect(generalisedEsd(changed, 2).outlierCount).toBe(generalisedEsd(values, 2).outlierCount);
    }
    expect(cochranTest([3, 3, 3, 15], 3).statistic).toBeCloseTo(cochranTest([1, 1, 1, 5], 3).statistic, 14);
  });
});

describe('readings without spread have a stated result, never NaN', () => {
  // Three times 0.1 has a mean that differs from 0.1 in the last bit.
  const flat = [0.1, 0.1, 0.1, 0.1];

  test('no suspect, no outlier', () => {
    expect(grubbsTest(flat)).toMatchObject({ statistic: 0, suspectIndex: null, isOutlier: false });
    expect(dixonR10(flat)).toMatchObject({ statistic: 0, suspectIndex: null, isOutlier: false });
    expect(doubleGrubbsTest(flat)).toMatchObject({
      ratioWithoutTwoSmallest: 1,
      ratioWithoutTwoLargest: 1,
      areTwoLargestOutliers: false,
      areTwoSmallestOutliers: false,
    });
    expect(generalisedEsd(flat, 2)).toMatchObject({ outlierCount: 0, outlierIndices: [] });
    expect(cochranTest([0, 0, 0], 3)).toMatchObject({ statistic: 0, suspectIndex: null, isOutlier: false });
  });

  test('an outlier over an otherwise flat set is still found', () => {
    const found = generalisedEsd([0.1, 0.1, 0.1, 0.1, 9], 3);
    expect(found).toMatchObject({ outlierCount: 1, outlierIndices: [4] });
    expect(found.steps[1]).toMatchObject({ statistic: 0, suspectIndex: null });
  });
});

describe('bad input', () => {
  test('too few readings', () => {
    for (const run of [grubbsTest, dixonR10, doubleGrubbsTest]) expect(errorCode(() => run([1, 2]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => doubleGrubbsTest([1, 2, 3]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => generalisedEsd([1, 2], 1))).toBe('measurement/too-few-readings');
    expect(errorCode(() => grubbsCritical(2, 0.05))).toBe('measurement/too-few-readings');
    expect(errorCode(() => cochranTest([1], 3))).toBe('measurement/too-few-readings');
    expect(errorCode(() => cochranTest([1, 2], 1))).toBe('measurement/too-few-readings');
  });

  test('NaN', () => {
    for (const run of [grubbsTest, dixonR10, doubleGrubbsTest])
      expect(errorCode(() => run([1, 2, NaN, 3]))).toBe('measurement/not-a-number');
    expect(errorCode(() => generalisedEsd([1, 2, NaN, 3], 1))).toBe('measurement/not-a-number');
    expect(errorCode(() => cochranTest([1, NaN], 3))).toBe('measurement/not-a-number');
  });

  test('sizes without a critical value are refused, not guessed', () => {
    const twentyOne = Array.from({ length: 21 }, (_, i) => i);
    expect(errorCode(() => doubleGrubbsTest(twentyOne))).toBe('outliers/no-critical-value');
    expect(errorCode(() => dixonR10(twentyOne.slice(0, 11)))).toBe('outliers/no-critical-value');
  });

  test('impossible settings', () => {
    for (const maximum of [0, 3, 1.5]) expect(errorCode(() => generalisedEsd([1, 2, 3, 4], maximum))).toBe('outliers/bad-maximum');
    for (const alpha of [0, 1, 5]) {
      expect(errorCode(() => grubbsTest([1, 2, 3], alpha))).toBe('distributions/out-of-domain');
      expect(errorCode(() => cochranTest([1, 2], 3, alpha))).toBe('distributions/out-of-domain');
    }
    expect(errorCode(() => cochranTest([1, -2], 3))).toBe('outliers/negative-deviation');
  });
});

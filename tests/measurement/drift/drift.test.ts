import { chartConstants } from '../support/formulas/chart-constants.js';
import { cusumChart } from '../support/formulas/cusum-chart.js';
import { ewmaChart } from '../../../api/measurement/drift/ewma-chart.js';
import { individualsChart } from '../../../api/measurement/drift/individuals-chart.js';
import { judgePulls, rigLimits } from '../../../api/measurement/drift/control-chart.js';
import { movingRangeLimit } from '../../../api/measurement/drift/moving-range-limit.js';
import { rigEvidence } from '../../../api/measurement/drift/rig-evidence.js';
import { runRules } from '../../../api/measurement/drift/run-rules.js';
import type { RunRule } from '../../../api/measurement/drift/run-rules.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const charts = referenceCases('charts');

test(named(charts['C01-constants']!), () => {
  const one = charts['C01-constants']!;
  const found = (one.inputs.n as number[]).map(chartConstants);
  expectReference(one, {
    d2: found.map(({ d2 }) => d2),
    c4: found.map(({ c4 }) => c4),
    A2: found.map(({ a2 }) => a2),
    d3_n2_to_6: found.slice(0, 5).map(({ d3 }) => d3),
    D4_n2_to_5: found.slice(0, 4).map(({ upperD4 }) => upperD4),
  });
  // The chart of individuals uses the closed forms for two readings.
  expect(chartConstants(2).d2).toBeCloseTo(2 / Math.sqrt(Math.PI), 9);
  expect(errorCode(() => chartConstants(1))).toBe('drift/bad-group-size');
});

test(named(charts['C02-imr-flowrate']!), () => {
  const one = charts['C02-imr-flowrate']!;
  const { centre, sigma, meanMovingRange, low, high, movingRangeHigh } = individualsChart(one.inputs.values);
  const violations = (one.inputs.values as number[]).filter((value) => value > high || value < low);
  expectReference(one, { mean: centre, mr_bar: meanMovingRange, sigma, UCL: high, LCL: low, MR_UCL: movingRangeHigh, violations });
});

test(named(charts['C03-ewma-nist']!), () => {
  const one = charts['C03-ewma-nist']!;
  const { values, start, s, lambda, k } = one.inputs;
  const { ewma, low, high, firstSignal } = ewmaChart(values, { centre: start, sigma: s }, lambda, k);
  expectReference(one, { ewma, UCL: high, LCL: low });
  expect(firstSignal).toBeNull();
});

test('the moving average sees a slow drift that no single point shows, at its own point', () => {
  const drifting = [0, 0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1];
  const { ewma, high, firstSignal } = ewmaChart(drifting, { centre: 0, sigma: 1 }, 0.2);
  expect(firstSignal).toBe(ewma.findIndex((value) => value > high) - 1);
  expect(drifting[firstSignal!]).toBeLessThan(3);
  expect(errorCode(() => ewmaChart([], { centre: 0, sigma: 1 }))).toBe('measurement/too-few-readings');
  expect(errorCode(() => ewmaChart([1], { centre: 0, sigma: 0 }))).toBe('figures/not-positive');
  expect(errorCode(() => ewmaChart([1], { centre: 0, sigma: 1 }, 0))).toBe('drift/bad-weight');
  expect(errorCode(() => ewmaChart([1], { centre: 0, sigma: 1 }, 1.1))).toBe('drift/bad-weight');
});

test(named(charts['C04-cusum-nist']!), () => {
  const one = charts['C04-cusum-nist']!;
  const { high, low, firstSignal } = cusumChart(one.inputs.values, one.inputs);
  expectReference(one, {
    S_hi: high,
    S_lo: low,
    first_signal_index_1based: firstSignal!.index + 1,
    first_signal_side: firstSignal!.side,
  });
  expect(cusumChart([10], { target: 10, k: 0, h: 1 }).firstSignal).toBeNull();
  expect(cusumChart([5], { target: 10, k: 0, h: 1 }).firstSignal).toEqual({ index: 0, side: 'low' });
  expect(errorCode(() => cusumChart([], { target: 0, k: 0, h: 1 }))).toBe('measurement/too-few-readings');
});

const RULES: Record<string, RunRule> = {
  one_beyond_3s: 'oneBeyond3Sigma',
  two_of_three_2s: 'twoOfThreeBeyond2Sigma',
  four_of_five_1s: 'fourOfFiveBeyond1Sigma',
  eight_one_side: 'eightOnOneSide',
  nine_one_side_nelson: 'nineOnOneSide',
  six_trend: 'sixTrending',
};
const LIMITS = { centre: 0, sigma: 1 };

test.each(Object.keys(charts['C05-rules']!.inputs.sequences))(`C05 ${charts['C05-rules']!.source}: %s`, (name) => {
  const values = charts['C05-rules']!.inputs.sequences[name] as number[];
  const first = Object.entries(RULES).flatMap(([key, rule]) => {
    const at = values.findIndex((_, i) => runRules(values.slice(0, i + 1), LIMITS, [rule]).length > 0);
    return at === -1 ? [] : [[key, at + 1]];
  });
  expect(Object.fromEntries(first)).toEqual(charts['C05-rules']!.expected.first_signal_1based[name]);
});

test('run rules: mirrored, strict at their limits, and only where the last point takes part', () => {
  expect(runRules([-3.1], LIMITS)).toEqual(['oneBeyond3Sigma']);
  expect(runRules([3], LIMITS)).toEqual([]);
  expect(runRules([2.2, 2.3, 0], LIMITS)).toEqual([]);
  expect(runRules([2.2, 0, 2.3], LIMITS)).toEqual(['twoOfThreeBeyond2Sigma']);
  expect(runRules([2.2, 0, 0, 2.3], LIMITS)).toEqual([]);
  expect(runRules([], LIMITS)).toEqual([]);
  expect(runRules([0, 0, 0, 0, 0, 0, 0, 0, 0], LIMITS, ['eightOnOneSide', 'sixTrending'])).toEqual([]);
  expect(
    runRules(
      [6, 5, 4, 3, 2, 1].map((value) => value / 10),
      LIMITS,
      ['sixTrending'],
    ),
  ).toEqual(['sixTrending']);
  const alternating = Array.from({ length: 14 }, (_, i) => (i % 2 === 0 ? 0.5 : -0.5));
  expect(runRules(alternating, LIMITS, ['fourteenAlternating'])).toEqual(['fourteenAlternating']);
  expect(runRules(alternating.slice(1), LIMITS, ['fourteenAlternating'])).toEqual([]);
  expect(runRules([5, 5.1], { centre: 5, sigma: 0 })).toEqual(['oneBeyond3Sigma']);
  expect(runRules([5], { centre: 5, sigma: 0 })).toEqual([]);
});

test('the limit of the moving range is 3.267 mean ranges of 1.128 σ (NIST/SEMATECH e-Handbook 6.3.2.2)', () => {
  expect(movingRangeLimit(2)).toBeCloseTo(3.267 * 1.128 * 2, 2);
  expect(movingRangeLimit(0)).toBe(0);
  expect(errorCode(() => movingRangeLimit(NaN))).toBe('measurement/not-a-number');
});

describe('the chart of a rig', () => {
  const baseline = [100, 101, 100, 101, 100, 101, 100, 101, 100, 101];
  const statesOf = (values: readonly number[]) => judgePulls(values).map(({ state }) => state);

  test('nothing is known until ten pulls give limits', () => {
    expect(statesOf(baseline)).toEqual(Array(10).fill('noEvidence'));
    expect(judgePulls(baseline).every(({ limits, ewma }) => limits === null && ewma === null)).toBe(true);
    expect(rigLimits(baseline.slice(1))).toBeNull();
    expect(rigLimits(Array(10).fill(100))).toBeNull();
    expect(rigLimits(baseline)).toEqual({ centre: expect.closeTo(100.5, 10), sigma: expect.closeTo(Math.sqrt(Math.PI) / 2, 10) });
    expect(statesOf(Array(11).fill(100))).toEqual(Array(11).fill('noEvidence'));
  });

  test('a pull beyond three sigma is out, and the next good one clears the rig', () => {
    const judged = judgePulls([...baseline, 104, 103.9, 100.6]);
    expect(judged.slice(10).map(({ state, signals }) => [state, ...signals])).toEqual([
      ['outOfControl', 'oneBeyond3Sigma'],
      ['outOfControl', 'oneBeyond3Sigma'],
      ['inControl'],
    ]);
    expect(judged[11]!.limits).toEqual(rigLimits(baseline));
    expect(judged[10]!.movingRange).toBe(3);
    // Weight 0.2: 0.2 × 104 + 0.8 × 100.5 (NIST/SEMATECH e-Handbook 6.3.2.4).
    expect(judged[10]!.ewma).toBeCloseTo(101.2, 10);
    // 3σ√(0.2/1.8) = σ on either side (NIST/SEMATECH e-Handbook 6.3.2.4); σ is MR̄/d₂ = √π/2.
    expect(judged[10]!.ewmaLimits).toEqual({
      low: expect.closeTo(100.5 - Math.sqrt(Math.PI) / 2, 10),
      high: expect.closeTo(100.5 + Math.sqrt(Math.PI) / 2, 10),
    });
  });

  test('a slow shift is seen by the run of pulls, not by one', () => {
    const [shifted] = judgePulls([...baseline, 102.3, 102.3]).slice(-1);
    expect(shifted!.signals).toEqual(['twoOfThreeBeyond2Sigma']);
    expect(statesOf([...baseline, 102.3, 102.3, 102.3]).slice(10)).toEqual(['inControl', 'outOfControl', 'inControl']);
  });

  test('limits stay when twenty good pulls made them', () => {
    const twenty = Array.from({ length: 20 }, (_, i) => 100 + (i % 2));
    const judged = judgePulls([...twenty, 100.9, 100.1, 100.9]);
    expect(judged.slice(20).map(({ limits }) => limits)).toEqual(Array(3).fill(rigLimits(twenty)));
  });

  test('a pull that is no number is refused', () => {
    expect(errorCode(() => judgePulls([1, NaN]))).toBe('measurement/not-a-number');
    expect(errorCode(() => rigLimits([1, Infinity]))).toBe('measurement/not-a-number');
  });
});

describe('the evidence of a rig on a day', () => {
  const pulls = [
    { day: '2031-03-01', state: 'inControl' },
    { day: '2031-03-08', state: 'inControl' },
    { day: '2031-03-15', state: 'outOfControl' },
    { day: '2031-03-22', state: 'outOfControl' },
    { day: '2031-03-22', state: 'inControl' },
    { day: '2031-03-29', state: 'inControl' },
  ] as const;
  const on = (day: string) => rigEvidence(pulls, day);

  test('the last pull of the day decides', () => {
    expect(on('2031-03-01')).toEqual({ state: 'inControl', decidedOn: '2031-03-01', pulls: 1 });
    expect(on('2031-03-15')).toEqual({ state: 'outOfControl', decidedOn: '2031-03-15', pulls: 3 });
    expect(on('2031-03-22')).toEqual({ state: 'inControl', decidedOn: '2031-03-22', pulls: 5 });
    expect(on('2031-03-02')).toEqual({ state: 'noEvidence', decidedOn: null, pulls: 1 });
    expect(rigEvidence([], '2031-03-02')).toEqual({ state: 'noEvidence', decidedOn: null, pulls: 0 });
  });

  test('a bad pull casts doubt back to the last good one, the day of that one too', () => {
    expect(on('2031-03-08')).toMatchObject({ state: 'outOfControl', decidedOn: '2031-03-15' });
    expect(on('2031-03-10')).toMatchObject({ state: 'outOfControl', decidedOn: '2031-03-15' });
    expect(rigEvidence(pulls.slice(0, 2), '2031-03-08').state).toBe('inControl');
  });

  test('a rig that is out stays out until a good pull clears it, whoever pulls without one', () => {
    expect(on('2031-03-18')).toMatchObject({ state: 'outOfControl', decidedOn: '2031-03-15' });
    expect(rigEvidence(pulls.slice(0, 3), '2031-04-30')).toMatchObject({ state: 'outOfControl', decidedOn: '2031-03-15' });
    expect(on('2031-03-23')).toMatchObject({ state: 'noEvidence', decidedOn: null });
  });

  test('on a day with a pull of the baseline the rig is learning; on a day without one nothing is known', () => {
    const learning = [
      { day: '2031-03-01', state: 'noEvidence' },
      { day: '2031-03-08', state: 'noEvidence' },
    ] as const;
    expect(rigEvidence(learning, '2031-03-08')).toEqual({ state: 'learning', decidedOn: '2031-03-08', pulls: 2 });
    expect(rigEvidence(learning, '2031-03-09')).toEqual({ state: 'noEvidence', decidedOn: null, pulls: 2 });
    expect(rigEvidence([...learning, { day: '2031-03-09', state: 'outOfControl' }], '2031-03-08').state).toBe('outOfControl');
  });
});

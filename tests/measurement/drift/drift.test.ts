import { chartConstants } from '../../../api/measurement/drift/chart-constants.js';
import { cusumChart } from '../../../api/measurement/drift/cusum-chart.js';
import { ewmaChart } from '../../../api/measurement/drift/ewma-chart.js';
import { individualsChart } from '../../../api/measurement/drift/individuals-chart.js';
import { rigEvidence, rigLimits } from '../../../api/measurement/drift/rig-evidence.js';
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

describe('the evidence of a rig', () => {
  const limits = { centre: 100, sigma: 1 };
  const pulls = [
    { day: '2031-03-01', value: 100.2 },
    { day: '2031-03-02', value: 104 },
    { day: '2031-03-04', value: 103.5 },
    { day: '2031-03-04', value: 100.1 },
  ];

  test('three states', () => {
    expect(rigEvidence(pulls, limits, '2031-03-01')).toEqual({ state: 'inControl', signals: [], lastInControlDay: '2031-03-01' });
    expect(rigEvidence(pulls, limits, '2031-03-02')).toEqual({
      state: 'outOfControl',
      signals: ['oneBeyond3Sigma'],
      lastInControlDay: '2031-03-01',
    });
    expect(rigEvidence(pulls, limits, '2031-03-03')).toEqual({ state: 'noEvidence', signals: [], lastInControlDay: '2031-03-01' });
    expect(rigEvidence([], limits, '2031-03-03')).toEqual({ state: 'noEvidence', signals: [], lastInControlDay: null });
  });

  test('a later good pull on the day clears the rig', () => {
    expect(rigEvidence(pulls.slice(0, 3), limits, '2031-03-04').state).toBe('outOfControl');
    expect(rigEvidence(pulls, limits, '2031-03-04')).toEqual({ state: 'inControl', signals: [], lastInControlDay: '2031-03-04' });
  });

  test('a slow shift is seen by the run of pulls, not by one', () => {
    const shifted = Array.from({ length: 8 }, (_, i) => ({ day: `2031-04-0${i + 1}`, value: 100.6 }));
    expect(rigEvidence(shifted, limits, '2031-04-07').state).toBe('inControl');
    expect(rigEvidence(shifted, limits, '2031-04-08').signals).toEqual(['eightOnOneSide']);
  });

  test('without limits nothing is known: too few pulls, or pulls without spread', () => {
    expect(rigLimits([100, 101, 100, 101])).toBeNull();
    expect(rigLimits([100, 100, 100, 100, 100])).toBeNull();
    expect(rigLimits([100, 101, 100, 101, 100])).toEqual({
      centre: expect.closeTo(100.4, 10),
      sigma: expect.closeTo(Math.sqrt(Math.PI) / 2, 10),
    });
    expect(rigEvidence(pulls, null, '2031-03-01').state).toBe('noEvidence');
    expect(errorCode(() => rigEvidence([{ day: '2031-03-01', value: NaN }], limits, '2031-03-01'))).toBe('measurement/not-a-number');
    expect(errorCode(() => rigLimits([1, Infinity]))).toBe('measurement/not-a-number');
  });
});

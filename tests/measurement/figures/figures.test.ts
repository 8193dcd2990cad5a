import { capstanHoldingForceN } from '../support/formulas/capstan.js';
import { circleAreaMm2, ellipseAreaMm2, equivalentSolidDiameterMm, solidAreaMm2 } from '../../../api/measurement/figures/cross-section.js';
import { diameterMm, outOfRoundnessPercent } from '../../../api/measurement/figures/diameter.js';
import { crossheadSpeedMmPerMin, timeToBreakS } from '../support/formulas/extension-rate.js';
import { isInStandardAtmosphere } from '../support/formulas/standard-atmosphere.js';
import { linearDensityTex } from '../../../api/measurement/figures/strength.js';
import { apparentStressMPa, solidStressMPa, tenacityCNPerTex, tenacityOfSolidStress } from '../support/formulas/stress-and-tenacity.js';
import { convert } from '../../../api/measurement/units/convert.js';
import { parseQuantity } from '../../../api/measurement/units/parse-quantity.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('textile');

test(named(cases['X01-capstan']!), () => {
  const { rows } = cases['X01-capstan']!.inputs;
  expectReference(cases['X01-capstan']!, { T_hold_N: rows.map((row: any) => capstanHoldingForceN(row.T_load_N, row.mu, row.turns)) });
});

test.each(['X03-rate-and-time', 'X13-rate-and-time'])('%s (recomputed): constant rate of extension', (id) => {
  const { rows } = cases[id]!.inputs;
  expectReference(cases[id]!, {
    time_s_at_100pct_per_min: rows.map((row: any) => timeToBreakS(row.elongation_at_break_percent, 100)),
    speed_mm_min_for_20s: rows.map((row: any) => crossheadSpeedMmPerMin(row.gauge_mm, row.elongation_at_break_percent, 20)),
  });
});

test(named(cases['X08-atmosphere']!), () => {
  const observations: [number, number][] = cases['X08-atmosphere']!.inputs.observations_C_RH;
  expectReference(cases['X08-atmosphere']!, {
    standard: observations.map(([celsius, humidity]) => isInStandardAtmosphere(celsius, humidity, 'standard')),
    alternative: observations.map(([celsius, humidity]) => isInStandardAtmosphere(celsius, humidity, 'alternative')),
  });
  expect(isInStandardAtmosphere(NaN, 65, 'standard')).toBe(false);
});

// Common practice: rounded figures of a worked example.
test('36.52 lbf on 0.256 mm is 457 750 psi within 5 (common practice)', () => {
  const forceN = Number(parseQuantity('36.52', 'lbf').si);
  const stressMPa = apparentStressMPa(forceN, circleAreaMm2(0.256));
  expect(Math.abs(Number(convert(stressMPa * 1e6, 'psi')) - 457_750)).toBeLessThanOrEqual(5);
});

describe('diameter and section', () => {
  const stations = [
    { wideMm: 0.3, narrowMm: 0.2 },
    { wideMm: 0.28, narrowMm: 0.26 },
  ];

  test('mean of station means; out-of-roundness by station', () => {
    expect(diameterMm(stations)).toBeCloseTo(0.26, 14);
    expect(outOfRoundnessPercent(stations)).toBeCloseTo((40 + (100 * 0.02) / 0.27) / 2, 10);
    expect(outOfRoundnessPercent([{ wideMm: 0.2, narrowMm: 0.2 }])).toBe(0);
  });

  test('the three sections', () => {
    expect(circleAreaMm2(2)).toBeCloseTo(Math.PI, 14);
    expect(ellipseAreaMm2([{ wideMm: 4, narrowMm: 1 }])).toBeCloseTo(Math.PI, 14);
    expect(ellipseAreaMm2([{ wideMm: 0.2, narrowMm: 0.2 }])).toBeCloseTo(circleAreaMm2(0.2), 15);
    expect(ellipseAreaMm2(stations)).toBeCloseTo((Math.PI / 4) * ((0.06 + 0.0728) / 2), 14);
    expect(solidAreaMm2(97, 0.97)).toBeCloseTo(0.1, 15);
    expect(circleAreaMm2(equivalentSolidDiameterMm(50, 0.97))).toBeCloseTo(solidAreaMm2(50, 0.97), 15);
  });

  test('twice the size has the same roundness and four times the area', () => {
    const doubled = stations.map(({ wideMm, narrowMm }) => ({ wideMm: 2 * wideMm, narrowMm: 2 * narrowMm }));
    expect(diameterMm(doubled)).toBeCloseTo(2 * diameterMm(stations), 14);
    expect(outOfRoundnessPercent(doubled)).toBeCloseTo(outOfRoundnessPercent(stations), 10);
    expect(ellipseAreaMm2([...doubled].reverse())).toBeCloseTo(4 * ellipseAreaMm2(stations), 14);
  });

  test('missing, reversed or impossible stations are refused', () => {
    for (const run of [diameterMm, outOfRoundnessPercent, ellipseAreaMm2]) {
      expect(errorCode(() => run([]))).toBe('measurement/too-few-readings');
      expect(errorCode(() => run([{ wideMm: 0.2, narrowMm: 0.3 }]))).toBe('figures/wide-below-narrow');
      for (const bad of [0, -0.1, NaN, Infinity]) {
        expect(errorCode(() => run([{ wideMm: bad, narrowMm: 0.1 }]))).toBe('figures/not-positive');
        expect(errorCode(() => run([{ wideMm: 0.3, narrowMm: bad }]))).toBe('figures/not-positive');
      }
    }
  });
});

describe('strength', () => {
  test('force, section and linear density', () => {
    expect(apparentStressMPa(100, 0.05)).toBe(2000);
    expect(linearDensityTex(0.5, 10)).toBe(50);
    expect(tenacityCNPerTex(100, 50)).toBe(200);
    expect(apparentStressMPa(0, 0.05)).toBe(0);
  });

  test('tenacity and solid stress say the same', () => {
    const [forceN, tex, density] = [120, 44, 0.97];
    expect(solidStressMPa(tenacityCNPerTex(forceN, tex), density)).toBeCloseTo(apparentStressMPa(forceN, solidAreaMm2(tex, density)), 9);
    expect(tenacityOfSolidStress(solidStressMPa(300, 0.97), 0.97)).toBeCloseTo(300, 12);
  });

  test.each([0, -1, NaN, Infinity])('a divisor of %p is refused', (bad) => {
    const runs = [
      () => circleAreaMm2(bad),
      () => solidAreaMm2(bad, 1),
      () => solidAreaMm2(1, bad),
      () => equivalentSolidDiameterMm(1, bad),
      () => apparentStressMPa(1, bad),
      () => linearDensityTex(1, bad),
      () => linearDensityTex(bad, 1),
      () => tenacityCNPerTex(1, bad),
      () => solidStressMPa(1, bad),
      () => tenacityOfSolidStress(1, bad),
      () => timeToBreakS(bad, 1),
      () => timeToBreakS(1, bad),
      () => crossheadSpeedMmPerMin(bad, 1, 1),
      () => crossheadSpeedMmPerMin(1, bad, 1),
      () => crossheadSpeedMmPerMin(1, 1, bad),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('figures/not-positive');
  });

  test.each([-1, NaN, Infinity])('a force of %p is refused', (bad) => {
    const runs = [
      () => apparentStressMPa(bad, 1),
      () => tenacityCNPerTex(bad, 1),
      () => solidStressMPa(bad, 1),
      () => tenacityOfSolidStress(bad, 1),
      () => capstanHoldingForceN(bad, 0.1, 1),
      () => capstanHoldingForceN(1, bad, 1),
      () => capstanHoldingForceN(1, 0.1, bad),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('figures/negative');
  });
});

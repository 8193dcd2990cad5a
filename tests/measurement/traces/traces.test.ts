import { elongationPercent } from '../../../api/measurement/traces/elongation.js';
import { initialModulusMPa } from '../../../api/measurement/traces/initial-modulus.js';
import { samplingLoss } from '../support/formulas/sampling-loss.js';
import { slipEvents } from '../../../api/measurement/traces/slip-events.js';
import { toeCompensation } from '../../../api/measurement/traces/toe-compensation.js';
import { findPeak } from '../../../api/measurement/traces/trace.js';
import type { TracePoint } from '../../../api/measurement/traces/trace.js';
import { workToBreakJ } from '../../../api/measurement/traces/work-to-break.js';
import { initialModulusCNPerTex, rawElongationPercent, toughnessJPerG } from '../support/formulas/trace-figures.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('trace');
const upTo = (lastMm: number, stepMm: number, force: (x: number) => number): TracePoint[] =>
  Array.from({ length: Math.round(lastMm / stepMm) + 1 }, (_, i) => ({ extensionMm: i * stepMm, forceN: force(i * stepMm) }));
const traceOf = (pairs: readonly (readonly [number, number])[]): TracePoint[] =>
  pairs.map(([extensionMm, forceN]) => ({ extensionMm, forceN }));

test(named(cases['E01-linear']!), () => {
  const one = cases['E01-linear']!;
  const { gauge_mm: gauge, tex, k_N_per_mm: k, x_b_mm: breakAt } = one.inputs;
  const points = upTo(20, 0.1, (x) => (x <= breakAt + 1e-9 ? k * x : 0));
  const { forceN, extensionMm } = findPeak(points);
  const work = workToBreakJ(points);
  expectReference(one, {
    peak_N: forceN,
    extension_at_peak_mm: extensionMm,
    elongation_percent: rawElongationPercent(points, gauge),
    energy_J: work,
    toughness_J_per_g: toughnessJPerG(work, tex, gauge),
  });
});

const toeCase = cases['E02-quadratic-toe']!;
const toePoints = (): TracePoint[] => {
  const { a, x0_mm: x0, x_b_mm: breakAt } = toeCase.inputs;
  return upTo(breakAt, 0.01, (x) => (x <= x0 ? a * x * x : a * x0 * x0 + 2 * a * x0 * (x - x0)));
};

test(named(toeCase), () => {
  const points = toePoints();
  const { gauge_mm: gauge } = toeCase.inputs;
  const toe = toeCompensation(points, { fromFraction: 0.3, toFraction: 0.9 });
  const { forceN, extensionMm } = findPeak(points);
  expectReference(toeCase, {
    peak_N: forceN,
    initial_stiffness_N_per_mm: toe.stiffnessNPerMm,
    toe_offset_mm: toe.toeOffsetMm,
    extension_corrected_mm: extensionMm - toe.toeOffsetMm,
    elongation_corrected_percent: elongationPercent(points, gauge, toe, 'corrected'),
    elongation_corrected_percent_nominal_gauge: elongationPercent(points, gauge, toe, 'nominal'),
    elongation_raw_percent: rawElongationPercent(points, gauge),
    energy_J: workToBreakJ(points),
  });
});

const sawtooth = cases['E03-sawtooth']!;
test(named(sawtooth), () => {
  const points = traceOf(sawtooth.inputs.points_x_mm_F_N);
  const events = slipEvents(points, sawtooth.inputs.drop_threshold_fraction_of_running_peak);
  const peak = findPeak(points);
  expectReference(sawtooth, {
    peak_N: peak.forceN,
    extension_at_peak_mm: peak.extensionMm,
    energy_to_peak_J: workToBreakJ(points),
    slip_drops_before_break: events.length,
    first_drop_at_mm: events[0]!.atExtensionMm,
    max_relative_drop_before_break: Math.max(...events.map((event) => event.relativeDrop)),
  });
});

test.each(['E04-sampling-loss', 'E15-sampling-loss'])('%s (recomputed): slope over rate', (id) => {
  const found = cases[id]!.inputs.rows.map((row: any) => samplingLoss(row.ramp_N_per_s, row.rate_Hz));
  expectReference(cases[id]!, {
    max_missed_N: found.map((loss: any) => loss.maxMissedN),
    mean_missed_N: found.map((loss: any) => loss.meanMissedN),
  });
});

describe('slip', () => {
  const at = (pairs: [number, number][], threshold?: number) => slipEvents(traceOf(pairs), threshold);

  test('a drop counts only beyond the threshold', () => {
    const pairs: [number, number][] = [
      [0, 0],
      [1, 100],
      [2, 95],
      [3, 110],
    ];
    expect(at(pairs)).toEqual([]);
    expect(at(pairs, 0.049)).toHaveLength(1);
  });

  test('a fall in several samples is one event with its lowest force', () => {
    expect(
      at([
        [0, 0],
        [1, 100],
        [2, 90],
        [3, 70],
        [4, 80],
        [5, 100],
        [6, 120],
        [7, 0],
      ]),
    ).toEqual([{ atExtensionMm: 1, fromForceN: 100, toForceN: 70, relativeDrop: 0.3 }]);
  });

  test('the break itself and noise about zero are no slips', () => {
    expect(
      at([
        [0, 0],
        [1, 100],
        [2, 0],
        [3, 20],
        [4, 0],
      ]),
    ).toEqual([]);
    expect(
      at(
        [
          [0, 0.1],
          [0.1, -0.1],
          [0.2, -0.2],
          [1, 100],
        ],
        0.05,
      ),
    ).toEqual([{ atExtensionMm: 0, fromForceN: 0.1, toForceN: -0.2, relativeDrop: expect.closeTo(3, 10) }]);
    expect(
      at([
        [0, 0],
        [0.1, -0.1],
        [1, 100],
      ]),
    ).toEqual([]);
  });
});

describe('properties', () => {
  test('slack before the line takes load moves the offset and nothing else', () => {
    const points = toePoints();
    const slack = points.map(({ extensionMm, forceN }) => ({ extensionMm: extensionMm + 7, forceN }));
    const band = { fromFraction: 0.3, toFraction: 0.9 };
    const [plain, shifted] = [toeCompensation(points, band), toeCompensation(slack, band)];
    expect(shifted.stiffnessNPerMm).toBeCloseTo(plain.stiffnessNPerMm, 9);
    expect(shifted.toeOffsetMm - 7).toBeCloseTo(plain.toeOffsetMm, 8);
    expect(elongationPercent(slack, 500, shifted, 'nominal')).toBeCloseTo(elongationPercent(points, 500, plain, 'nominal'), 8);
    expect(workToBreakJ(slack)).toBeCloseTo(workToBreakJ(points), 10);
  });

  test('twice the force is twice the work and the same slips', () => {
    const points = traceOf(sawtooth.inputs.points_x_mm_F_N);
    const doubled = points.map(({ extensionMm, forceN }) => ({ extensionMm, forceN: 2 * forceN }));
    expect(workToBreakJ(doubled)).toBeCloseTo(2 * workToBreakJ(points), 12);
    expect(slipEvents(doubled).map((event) => event.relativeDrop)).toEqual(slipEvents(points).map((event) => event.relativeDrop));
  });

  test('what comes after the peak does not count', () => {
    const points = toePoints();
    const longer = [...points, { extensionMm: 23, forceN: 60 }, { extensionMm: 24, forceN: 50 }];
    const band = { fromFraction: 0.3, toFraction: 0.9 };
    expect(toeCompensation(longer, band)).toEqual(toeCompensation(points, band));
    expect(workToBreakJ(longer)).toBe(workToBreakJ(points));
  });

  test('modulus in both units says the same (σ = 10 τ ρ)', () => {
    expect(initialModulusCNPerTex(8, 500, 20)).toBe(20_000);
    expect(initialModulusMPa(8, 500, 20 / (1000 * 0.97))).toBeCloseTo(10 * 20_000 * 0.97, 6);
  });
});

describe('bad input', () => {
  const line = traceOf([
    [0, 0],
    [1, 10],
    [2, 20],
    [3, 30],
  ]);

  test('a trace that cannot be one', () => {
    for (const run of [findPeak, workToBreakJ, slipEvents]) {
      expect(errorCode(() => run([]))).toBe('traces/too-few-points');
      expect(errorCode(() => run(line.slice(0, 1)))).toBe('traces/too-few-points');
      expect(
        errorCode(() =>
          run(
            traceOf([
              [0, 0],
              [1, NaN],
            ]),
          ),
        ),
      ).toBe('measurement/not-a-number');
      expect(
        errorCode(() =>
          run(
            traceOf([
              [0, 0],
              [Infinity, 5],
            ]),
          ),
        ),
      ).toBe('measurement/not-a-number');
      expect(
        errorCode(() =>
          run(
            traceOf([
              [1, 0],
              [0, 5],
            ]),
          ),
        ),
      ).toBe('traces/extension-runs-back');
      expect(
        errorCode(() =>
          run(
            traceOf([
              [0, 0],
              [1, -5],
            ]),
          ),
        ),
      ).toBe('traces/no-load');
    }
  });

  test('no linear part, no band', () => {
    expect(errorCode(() => toeCompensation(line, { fromFraction: 0.9, toFraction: 1 }))).toBe('traces/no-linear-part');
    expect(
      errorCode(() =>
        toeCompensation(
          traceOf([
            [0, 10],
            [0, 10],
            [0, 10],
          ]),
          { fromFraction: 0.5, toFraction: 1 },
        ),
      ),
    ).toBe('traces/no-linear-part');
    // Two points; three at one extension; a fall before the peak.
    expect(errorCode(() => toeCompensation(line, { fromFraction: 0.6, toFraction: 1 }))).toBe('traces/no-linear-part');
    const upright = traceOf([
      [0, 10],
      [0, 20],
      [0, 30],
    ]);
    expect(errorCode(() => toeCompensation(upright, { fromFraction: 0, toFraction: 1 }))).toBe('traces/no-linear-part');
    const falling = traceOf([
      [0, 20],
      [1, 15],
      [2, 10],
      [3, 40],
    ]);
    expect(errorCode(() => toeCompensation(falling, { fromFraction: 0.2, toFraction: 0.6 }))).toBe('traces/no-linear-part');
    for (const [fromFraction, toFraction] of [
      [0.5, 0.5],
      [-0.1, 0.5],
      [0.5, 1.1],
      [NaN, 1],
    ] as [number, number][]) {
      expect(errorCode(() => toeCompensation(line, { fromFraction, toFraction }))).toBe('traces/bad-band');
    }
    expect(toeCompensation(line, { fromFraction: 0, toFraction: 1 })).toEqual({ stiffnessNPerMm: 10, toeOffsetMm: 0 });
  });

  test('lengths, rates and sections that are not positive', () => {
    const toe = { stiffnessNPerMm: 10, toeOffsetMm: -500 };
    const runs = [
      () => rawElongationPercent(line, 0),
      () => elongationPercent(line, 0, toe, 'nominal'),
      () => elongationPercent(line, 500, toe, 'corrected'),
      () => initialModulusCNPerTex(0, 1, 1),
      () => initialModulusCNPerTex(1, 0, 1),
      () => initialModulusCNPerTex(1, 1, 0),
      () => initialModulusMPa(0, 1, 1),
      () => initialModulusMPa(1, 0, 1),
      () => initialModulusMPa(1, 1, 0),
      () => samplingLoss(0, 10),
      () => samplingLoss(10, 0),
      () => toughnessJPerG(1, 0, 500),
      () => toughnessJPerG(1, 20, NaN),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('figures/not-positive');
    expect(errorCode(() => toughnessJPerG(-1, 20, 500))).toBe('figures/negative');
    for (const threshold of [0, 1, 5]) expect(errorCode(() => slipEvents(line, threshold))).toBe('distributions/out-of-domain');
  });
});

import { claimRatioPercent } from '../../../api/measurement/claims/claim-ratio.js';
import { claimLimits, claimVerdict, conformityProbability, decideClaim } from '../../../api/measurement/claims/decide-claim.js';
import { MONOFILAMENT_NUMBERS } from '../../../api/contract/monofilament-numbers.js';
import { monofilamentNumberDiameterMm } from '../support/formulas/monofilament-number.js';
import { labelPlausibility, peNumberDenier, peNumberTex } from '../../../api/measurement/claims/pe-number.js';
import { POLYETHYLENE_CELL, areaPerChainNm2, crystalDensityGPerCm3, idealStrengthGPa } from '../support/formulas/polymer-limit.js';
import { mayCarryStandard } from '../support/formulas/standard-scope.js';
import type { ScopedStandard } from '../support/formulas/standard-scope.js';
import { equivalentSolidDiameterMm } from '../../../api/measurement/figures/cross-section.js';
import { acceptanceLimit, guardBandedLimit } from '../support/formulas/acceptance-limits.js';
import { peNumberOfDenier } from '../support/formulas/pe-number-of-denier.js';
import { tenacityOfSolidStress } from '../support/formulas/stress-and-tenacity.js';
import { normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { convert } from '../../../api/measurement/units/convert.js';
import { parseQuantity } from '../../../api/measurement/units/parse-quantity.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('textile');

test(named(cases['X04-pe-number']!), () => {
  const { number, density_g_cm3: density } = cases['X04-pe-number']!.inputs;
  expectReference(cases['X04-pe-number']!, {
    denier: number.map(peNumberDenier),
    tex: number.map(peNumberTex),
    solid_equivalent_diameter_mm: number.map((one: number) => equivalentSolidDiameterMm(peNumberTex(one), density)),
  });
});

test(named(cases['X15-pe-number']!), () => {
  expectReference(cases['X15-pe-number']!, { number: cases['X15-pe-number']!.inputs.denier.map(peNumberOfDenier) });
});

test(named(cases['X05-nylon-number']!), () => {
  const { number } = cases['X05-nylon-number']!.inputs;
  expectReference(cases['X05-nylon-number']!, {
    nominal_diameter_mm: number.map((one: number) => Number(new Map<string, string>(MONOFILAMENT_NUMBERS).get(String(one)))),
    sqrt_rule_mm: number.map(monofilamentNumberDiameterMm),
  });
});

test('the series of monofilament numbers is that of tippets and reels, without a gap; each diameter lies by the square root of its number', () => {
  // Common practice, from memory.
  const tippets = [0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
  const reels = [1.2, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30];
  const leaders = [35, 40, 50, 60, 70, 80, 90, 100, 120, 150, 200];
  const series = MONOFILAMENT_NUMBERS.map(([number, diameter]) => [Number(number), Number(diameter)] as const);
  expect(series.map(([number]) => number)).toEqual([...tippets, ...reels, ...leaders]);
  for (const [i, [number, diameterMm]] of series.entries()) {
    expect(Math.abs(diameterMm / monofilamentNumberDiameterMm(number) - 1)).toBeLessThan(0.03);
    // From 0.1 to 0.15 is the widest step.
    expect(diameterMm / (series[i - 1]?.[1] ?? diameterMm)).toBeLessThan(1.21);
  }
});

test(named(cases['X06-line-classes']!), () => {
  const { kg, label_lb: pounds } = cases['X06-line-classes']!.inputs;
  expectReference(cases['X06-line-classes']!, {
    exact_lb_of_kg_class: kg.map((one: number) => Number(convert(parseQuantity(String(one), 'kgf').si, 'lbf'))),
    exact_kg_of_lb_label: pounds.map((one: number) => Number(convert(parseQuantity(String(one), 'lbf').si, 'kgf'))),
    kg_class_as_N: kg.map((one: number) => Number(parseQuantity(String(one), 'kgf').si)),
  });
});

test(named(cases['X07-pe-limits']!), () => {
  const { inputs } = cases['X07-pe-limits']!;
  const [aNm, bNm, cNm] = inputs.cell_nm;
  expect(POLYETHYLENE_CELL).toEqual({ aNm, bNm, cNm, chainsPerCell: inputs.chains_per_cell });
  expectReference(cases['X07-pe-limits']!, {
    area_per_chain_nm2: areaPerChainNm2(POLYETHYLENE_CELL),
    ideal_strength_GPa: idealStrengthGPa(inputs.bond_force_nN, POLYETHYLENE_CELL),
    // Each of the two chains crosses the cell with one repeat unit of two CH2.
    crystal_density_g_cm3: crystalDensityGPerCm3(POLYETHYLENE_CELL, inputs.CH2_molar_mass_g_mol, 4),
    tenacity_cN_per_tex_at_4GPa: tenacityOfSolidStress(4000, 0.97),
  });
});

test(named(cases['X09-scope-guard']!), () => {
  expectReference(cases['X09-scope-guard']!, {
    'ISO 2062:2009': {
      'UHMWPE yarn': mayCarryStandard('ISO 2062:2009', { fibre: 'uhmwpe', form: 'yarn' }),
      'aramid yarn': mayCarryStandard('ISO 2062:2009', { fibre: 'aramid', form: 'yarn' }),
      'nylon monofilament yarn': mayCarryStandard('ISO 2062:2009', { fibre: 'nylon', form: 'yarn' }),
    },
    'ISO 1805:2006': {
      'netting yarn, straight and knotted, dry and wet': mayCarryStandard('ISO 1805:2006', { fibre: 'nylon', form: 'netting-yarn' }),
    },
    'ASTM D2256': {
      'monofilament, multifilament, spun; straight, knotted or looped': mayCarryStandard('ASTM D2256', { fibre: 'other', form: 'yarn' }),
      'yarn stretching more than 5 % between 0.05 and 1.0 cN/tex': mayCarryStandard('ASTM D2256', {
        fibre: 'other',
        form: 'yarn',
        earlyStretchPercent: 5.1,
      }),
    },
  });
});

test('no braided line may carry the number of a yarn standard', () => {
  for (const standard of ['ISO 2062:2009', 'ISO 1805:2006', 'ASTM D2256'] as const) {
    expect(mayCarryStandard(standard, { fibre: 'uhmwpe', form: 'braided-line' })).toBe(false);
    expect(mayCarryStandard(standard, { fibre: 'nylon', form: 'braided-line' })).toBe(false);
  }
  for (const unknown of ['ISO 9999', 'toString']) {
    expect(errorCode(() => mayCarryStandard(unknown as ScopedStandard, { fibre: 'nylon', form: 'yarn' }))).toBe('claims/unknown-standard');
  }
});

describe('measured to claimed', () => {
  test.each([
    [0.25, 0.12, 208],
    [10.72, 16.7, 64.19],
  ])('%d on a claimed %d is %d %% (common practice)', (measured, claimed, percent) => {
    expect(claimRatioPercent(measured, claimed)).toBeCloseTo(percent, percent === 208 ? 0 : 2);
  });

  test('a claim of nothing has no ratio', () => {
    for (const claimed of [0, -1, NaN, Infinity]) expect(errorCode(() => claimRatioPercent(1, claimed))).toBe('claims/zero-claim');
    for (const measured of [-1, NaN, Infinity]) expect(errorCode(() => claimRatioPercent(measured, 1))).toBe('figures/negative');
    expect(claimRatioPercent(0, 5)).toBe(0);
  });
});

describe('the five words (JCGM 106)', () => {
  test.each([
    [1, 'meets'],
    [0.95, 'meets'],
    [0.9499999, 'probably meets'],
    [0.8, 'probably meets'],
    [0.7999999, 'cannot say'],
    [0.5, 'cannot say'],
    [0.2000001, 'cannot say'],
    [0.2, 'probably falls short'],
    [0.0500001, 'probably falls short'],
    [0.05, 'falls short'],
    [0, 'falls short'],
  ])('a probability of %d is "%s"', (probability, word) => {
    expect(claimVerdict(probability)).toBe(word);
  });

  test('the decision divides U by its k', () => {
    const found = decideClaim(100, 4, 2, { low: 100 - 2 * normalQuantile(0.9) });
    expect(found.conformityProbability).toBeCloseTo(0.9, 10);
    expect(found.verdict).toBe('probably meets');
    expect(decideClaim(100, 2, 2, { low: 95 }).verdict).toBe('meets');
    expect(decideClaim(90, 2, 2, { low: 95 }).verdict).toBe('falls short');
    expect(decideClaim(95, 2, 2, { low: 95 }).verdict).toBe('cannot say');
    expect(decideClaim(0.25, 0.01, 2, { high: 0.12 }).verdict).toBe('falls short');
  });

  test('an uncertainty from few repeats decides less: Student takes the place of the normal', () => {
    // Student's t: 6.314 is exceeded with 5 % at one degree of freedom, 1.833 at nine (NIST/SEMATECH e-Handbook, 1.3.6.7.2).
    expect(conformityProbability(100 + 6.314, 1, { low: 100 }, 1)).toBeCloseTo(0.95, 4);
    expect(conformityProbability(100 + 1.833, 1, { low: 100 }, 9)).toBeCloseTo(0.95, 4);
    expect(conformityProbability(100 - 1.833, 1, { low: 100 }, 9)).toBeCloseTo(0.05, 4);
    expect(decideClaim(94.6, 1.5, 1, { low: 100 }).verdict).toBe('falls short');
    expect(decideClaim(94.6, 1.5, 1, { low: 100 }, 1).verdict).toBe('probably falls short');
    expect(errorCode(() => conformityProbability(100, 1, { low: 99 }, 0))).toBe('distributions/out-of-domain');
  });

  test('two limits, and both far tails', () => {
    expect(conformityProbability(0, 1, { low: -1, high: 1 })).toBeCloseTo(0.6826894921, 9);
    const tail = conformityProbability(0, 1, { low: 8, high: 9 });
    expect(tail).toBeGreaterThan(6.2e-16);
    expect(tail).toBeCloseTo(conformityProbability(0, 1, { low: -9, high: -8 }), 25);
  });

  test('certainty decides on the limit itself', () => {
    expect(conformityProbability(95, 0, { low: 95 })).toBe(1);
    expect(conformityProbability(94.999, 0, { low: 95 })).toBe(0);
    expect(conformityProbability(95.001, 0, { low: 90, high: 95 })).toBe(0);
  });

  test('limits by what the claim bounds', () => {
    expect(claimLimits(100, 5, 'at-least')).toEqual({ low: 95 });
    expect(claimLimits(0.2, 10, 'at-most')).toEqual({ high: expect.closeTo(0.22, 12) });
    expect(claimLimits(100, 0, 'within')).toEqual({ low: 100, high: 100 });
  });

  test('a change of unit or of zero changes no probability', () => {
    const base = conformityProbability(97, 2, { low: 95, high: 110 });
    expect(conformityProbability(97 * 4.448, 2 * 4.448, { low: 95 * 4.448, high: 110 * 4.448 })).toBeCloseTo(base, 12);
    expect(conformityProbability(97 + 50, 2, { low: 95 + 50, high: 110 + 50 })).toBeCloseTo(base, 12);
  });

  test('bad input', () => {
    expect(errorCode(() => conformityProbability(1, 1, {}))).toBe('claims/no-limit');
    expect(errorCode(() => conformityProbability(1, 1, { low: 2, high: 1 }))).toBe('claims/bad-limits');
    expect(errorCode(() => conformityProbability(NaN, 1, { low: 2 }))).toBe('measurement/not-a-number');
    expect(errorCode(() => conformityProbability(1, 1, { low: NaN }))).toBe('measurement/not-a-number');
    expect(errorCode(() => conformityProbability(1, -1, { low: 2 }))).toBe('figures/negative');
    expect(errorCode(() => decideClaim(1, -1, 2, { low: 1 }))).toBe('figures/negative');
    expect(errorCode(() => decideClaim(1, 1, 0, { low: 1 }))).toBe('figures/not-positive');
    expect(errorCode(() => claimLimits(0, 5, 'at-least'))).toBe('figures/not-positive');
    expect(errorCode(() => claimLimits(1, -5, 'at-least'))).toBe('figures/negative');
    expect(errorCode(() => acceptanceLimit(1, 1, 1))).toBe('distributions/out-of-domain');
    expect(errorCode(() => acceptanceLimit(1, -1, 0.5))).toBe('figures/negative');
    expect(errorCode(() => guardBandedLimit(1, -1, 1))).toBe('figures/negative');
    expect(errorCode(() => guardBandedLimit(1, 1, -1))).toBe('figures/negative');
    for (const p of [-0.1, 1.1, NaN]) expect(errorCode(() => claimVerdict(p))).toBe('distributions/out-of-domain');
  });
});

describe('a label against itself', () => {
  // Solid rod of PE number 1 at 0.97 g/cm³: 0.1708 mm (X04).
  test('a braid cannot be thinner than its own material', () => {
    expect(labelPlausibility(0.12, 1)).toEqual({ solidDiameterMm: expect.closeTo(0.170790195, 8), isPossible: false });
    expect(labelPlausibility(0.171, 1).isPossible).toBe(true);
    const { solidDiameterMm } = labelPlausibility(1, 2);
    expect(labelPlausibility(solidDiameterMm, 2).isPossible).toBe(true);
    expect(labelPlausibility(0.165, 1, 1.14).isPossible).toBe(true);
  });

  test.each([0, -1, NaN, Infinity])('a figure of %p is refused', (bad) => {
    const runs = [
      () => peNumberDenier(bad),
      () => peNumberTex(bad),
      () => peNumberOfDenier(bad),
      () => labelPlausibility(bad, 1),
      () => labelPlausibility(0.2, bad),
      () => labelPlausibility(0.2, 1, bad),
      () => monofilamentNumberDiameterMm(bad),
      () => idealStrengthGPa(bad, POLYETHYLENE_CELL),
      () => areaPerChainNm2({ ...POLYETHYLENE_CELL, aNm: bad }),
      () => crystalDensityGPerCm3({ ...POLYETHYLENE_CELL, cNm: bad }, 14, 4),
      () => crystalDensityGPerCm3(POLYETHYLENE_CELL, bad, 4),
      () => crystalDensityGPerCm3(POLYETHYLENE_CELL, 14, bad),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('figures/not-positive');
  });
});

import { combineBudget } from '../support/formulas/combine-budget.js';
import type { BudgetComponent } from '../support/formulas/combine-budget.js';
import { coverageFactor } from '../support/formulas/coverage-factor.js';
import { propagateDistributions } from '../support/formulas/propagate-distributions.js';
import { circleStressRelativeUncertainty, combineRelative } from '../support/formulas/relative-uncertainty.js';
import {
  calibrationUncertainty,
  repeatabilityUncertainty,
  resolutionUncertainty,
} from '../../../api/measurement/uncertainty/standard-uncertainty.js';
import { conformityProbability } from '../../../api/measurement/claims/decide-claim.js';
import { acceptanceLimit, guardBandedLimit } from '../support/formulas/acceptance-limits.js';
import { normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { limitsUncertainty } from '../support/formulas/limits-uncertainty.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('uncertainty');
const component = (name: string, standardUncertainty: number, sensitivity: number, degreesOfFreedom: number | null): BudgetComponent => ({
  name,
  kind: 'B',
  standardUncertainty,
  sensitivity,
  degreesOfFreedom: degreesOfFreedom ?? Infinity,
});

test(named(cases['M01-gum-H1']!), () => {
  const one = cases['M01-gum-H1']!;
  const { x, u, nu } = one.inputs;
  const meanTheta = x.theta_K + x.Delta_K;
  const sensitivities: Record<string, number> = {
    ls_nm: 1,
    d_nm: 1,
    d1_nm: 1,
    d2_nm: 1,
    alpha_s_per_K: 0,
    delta_alpha_per_K: -x.ls_nm * meanTheta,
    theta_K: 0,
    Delta_K: 0,
    delta_theta_K: x.ls_nm * x.alpha_s_per_K,
  };
  const components = Object.keys(u).map((name) => component(name, u[name], sensitivities[name]!, nu[name]));
  const budget = combineBudget(components);
  const k = coverageFactor(budget.effectiveDegreesOfFreedom, 0.99);
  // Second order (JCGM 100 5.1.2 note): products of two inputs whose first-order terms vanish.
  const secondOrder = combineBudget([
    ...components,
    component('delta_alpha times theta', u.delta_alpha_per_K * Math.hypot(u.theta_K, u.Delta_K), x.ls_nm, null),
    component('alpha_s times delta_theta', u.alpha_s_per_K * u.delta_theta_K, x.ls_nm, null),
  ]);
  expectReference(one, {
    y_nm: x.ls_nm + x.d_nm,
    uc_nm: budget.combined,
    nu_eff: budget.effectiveDegreesOfFreedom,
    t99_at_floor_nu: k,
    U99_nm: budget.expanded(k),
    uc_with_second_order_nm: secondOrder.combined,
  });
});

test(named(cases['M02-welch-satterthwaite']!), () => {
  const { u, c, nu } = cases['M02-welch-satterthwaite']!.inputs;
  const budget = combineBudget(u.map((value: number, i: number) => component(`x${i}`, value, c[i], nu[i])));
  const k = coverageFactor(budget.effectiveDegreesOfFreedom);
  expectReference(cases['M02-welch-satterthwaite']!, {
    uc: budget.combined,
    nu_eff: budget.effectiveDegreesOfFreedom,
    k95_at_floor: k,
    U95: budget.expanded(k),
  });
});

/** A small seeded generator of numbers in (0, 1), so that the draws are the same on every run. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 2 ** 32;
  };
}

test(named(cases['M03-jcgm101-additive']!), () => {
  const normal = (next: () => number): number => normalQuantile(next());
  const rectangular = (sd: number) => (next: () => number) => (2 * next() - 1) * sd * Math.sqrt(3);
  const add = (inputs: readonly number[]): number => inputs.reduce((a, b) => a + b);
  const run = (samplers: ((next: () => number) => number)[]) => {
    const { standardUncertainty, low, high } = propagateDistributions(samplers, add, seeded(20_260_101), { draws: 200_000 });
    return { u: standardUncertainty, I95: [low, high] };
  };
  expectReference(cases['M03-jcgm101-additive']!, {
    a: run([normal, normal, normal, normal]),
    b: run([rectangular(1), rectangular(1), rectangular(1), rectangular(1)]),
    c: run([rectangular(1), rectangular(1), rectangular(1), rectangular(10)]),
  });
});

test(named(cases['M04-eurachem-A1']!), () => {
  const { inputs } = cases['M04-eurachem-A1']!;
  const volume = combineBudget([
    component('flask', limitsUncertainty(inputs.V_half_width_triangular, 'triangular'), 1, null),
    component('repeatability', inputs.V_repeatability_sd, 1, null),
    component('temperature', limitsUncertainty(inputs.V_temperature_half_width_rectangular, 'rectangular'), 1, null),
  ]);
  const purity = limitsUncertainty(inputs.P_half_width_rectangular, 'rectangular');
  const concentration = (1000 * inputs.m_mg * inputs.P) / inputs.V_ml;
  const relative = combineRelative([
    { name: 'mass', relativeUncertainty: inputs.u_m_mg / inputs.m_mg, exponent: 1 },
    { name: 'purity', relativeUncertainty: purity / inputs.P, exponent: 1 },
    { name: 'volume', relativeUncertainty: volume.combined / inputs.V_ml, exponent: -1 },
  ]);
  expectReference(cases['M04-eurachem-A1']!, {
    c_mg_per_l: concentration,
    u_V_ml: volume.combined,
    u_P: purity,
    u_c: concentration * relative,
    U_k2: 2 * concentration * relative,
  });
});

test(named(cases['M14-eurachem-A2']!), () => {
  const { inputs } = cases['M14-eurachem-A2']!;
  const concentration = (1000 * inputs.m_g * inputs.P) / (inputs.M_g_mol * inputs.V_ml);
  const relative = combineRelative([
    { name: 'mass', relativeUncertainty: inputs.u_m / inputs.m_g, exponent: 1 },
    { name: 'purity', relativeUncertainty: inputs.u_P / inputs.P, exponent: 1 },
    { name: 'molar mass', relativeUncertainty: inputs.u_M / inputs.M_g_mol, exponent: -1 },
    { name: 'volume', relativeUncertainty: inputs.u_V / inputs.V_ml, exponent: -1 },
    { name: 'repeatability', relativeUncertainty: inputs.rel_repeatability, exponent: 1 },
  ]);
  expectReference(cases['M14-eurachem-A2']!, { c_mol_l: concentration, u_c: concentration * relative });
});

test(named(cases['M05-conformity-upper']!), () => {
  const { y, u, T_U: high } = cases['M05-conformity-upper']!.inputs;
  expectReference(cases['M05-conformity-upper']!, { p_c: conformityProbability(y, u, { high }) });
});

test(named(cases['M06-guard-band']!), () => {
  const { T_L: low, u, r_values: multipliers, probability_target: target } = cases['M06-guard-band']!.inputs;
  const limits = multipliers.map((r: number) => guardBandedLimit(low, 2 * u, r));
  expectReference(cases['M06-guard-band']!, {
    A_L: limits,
    p_c_at_A_L: limits.map((limit: number) => conformityProbability(limit, u, { low })),
    A_L_for_95pct: acceptanceLimit(low, u, target),
  });
});

describe('single contributions', () => {
  test('each formula (JCGM 100 4.2.3, 4.3.3, F.2.2.1, 4.3.7)', () => {
    expect(repeatabilityUncertainty([1, 2, 3])).toBeCloseTo(1 / Math.sqrt(3), 14);
    expect(calibrationUncertainty(0.4, 2)).toBe(0.2);
    expect(resolutionUncertainty(0.01)).toBeCloseTo(0.01 / Math.sqrt(12), 16);
    // A display step of a is a rectangle of half-width a/2.
    expect(resolutionUncertainty(0.01)).toBeCloseTo(limitsUncertainty(0.005, 'rectangular'), 16);
  });

  test('stress on a circle counts the diameter twice', () => {
    expect(circleStressRelativeUncertainty(0.03, 0.02)).toBeCloseTo(0.05, 15);
    expect(circleStressRelativeUncertainty(0, 0.02)).toBeCloseTo(0.04, 15);
  });
});

describe('the budget', () => {
  const parts = [component('a', 3, 1, 10), component('b', 2, -2, null)];

  test('shares add up to the whole and keep the order given', () => {
    const { shares, combined } = combineBudget(parts);
    expect(combined).toBe(5);
    expect(shares).toEqual([
      { name: 'a', kind: 'B', contribution: 3, sharePercent: 36 },
      { name: 'b', kind: 'B', contribution: 4, sharePercent: 64 },
    ]);
    expect(combineBudget([...parts].reverse()).combined).toBe(5);
  });

  test('degrees of freedom: one component keeps its own, exact ones add none', () => {
    expect(combineBudget([parts[0]!]).effectiveDegreesOfFreedom).toBeCloseTo(10, 12);
    expect(combineBudget([parts[1]!]).effectiveDegreesOfFreedom).toBe(Infinity);
    expect(coverageFactor(Infinity)).toBeCloseTo(1.959964, 6);
    expect(coverageFactor(9.99)).toBe(coverageFactor(9));
    expect(coverageFactor(0.5)).toBe(coverageFactor(1));
  });

  test('a scale of all contributions leaves shares and degrees of freedom', () => {
    const scaled = combineBudget(parts.map((part) => ({ ...part, sensitivity: part.sensitivity * 7 })));
    expect(scaled.combined).toBeCloseTo(35, 12);
    expect(scaled.effectiveDegreesOfFreedom).toBeCloseTo(combineBudget(parts).effectiveDegreesOfFreedom, 10);
  });

  test('no uncertainty at all is zero, not NaN', () => {
    const nothing = combineBudget([component('a', 0, 1, 5)]);
    expect(nothing).toMatchObject({ combined: 0, effectiveDegreesOfFreedom: Infinity });
    expect(nothing.shares[0]!.sharePercent).toBe(0);
    expect(nothing.expanded(2)).toBe(0);
  });
});

describe('bad input', () => {
  test('an empty or impossible budget', () => {
    expect(errorCode(() => combineBudget([]))).toBe('uncertainty/no-components');
    expect(errorCode(() => combineBudget([component('a', -1, 1, 5)]))).toBe('figures/negative');
    expect(errorCode(() => combineBudget([component('a', NaN, 1, 5)]))).toBe('figures/negative');
    expect(errorCode(() => combineBudget([component('a', 1, NaN, 5)]))).toBe('measurement/not-a-number');
    expect(errorCode(() => combineBudget([component('a', 1, 1, 0)]))).toBe('distributions/out-of-domain');
    expect(errorCode(() => coverageFactor(0))).toBe('distributions/out-of-domain');
  });

  test('single contributions', () => {
    expect(errorCode(() => repeatabilityUncertainty([1]))).toBe('measurement/too-few-readings');
    expect(errorCode(() => calibrationUncertainty(1, 0))).toBe('figures/not-positive');
    expect(errorCode(() => calibrationUncertainty(-1, 2))).toBe('figures/negative');
    expect(errorCode(() => resolutionUncertainty(-1))).toBe('figures/negative');
    expect(errorCode(() => limitsUncertainty(Infinity, 'rectangular'))).toBe('figures/negative');
    expect(errorCode(() => combineRelative([]))).toBe('uncertainty/no-components');
    expect(errorCode(() => combineRelative([{ name: 'a', relativeUncertainty: -1, exponent: 1 }]))).toBe('figures/negative');
    expect(errorCode(() => combineRelative([{ name: 'a', relativeUncertainty: 1, exponent: NaN }]))).toBe('measurement/not-a-number');
  });

  test('too few draws, a bad level, a model that gives NaN', () => {
    const draw = [(next: () => number) => next()];
    const first = ([x]: readonly number[]): number => x!;
    expect(errorCode(() => propagateDistributions(draw, first, seeded(1), { draws: 9_999 }))).toBe('uncertainty/too-few-draws');
    expect(errorCode(() => propagateDistributions(draw, first, seeded(1), { draws: 10_000, level: 95 }))).toBe(
      'distributions/out-of-domain',
    );
    expect(errorCode(() => propagateDistributions(draw, () => NaN, seeded(1), { draws: 10_000 }))).toBe('measurement/not-a-number');
  });

  test('the same seed gives the same draws', () => {
    const run = (seed: number) => propagateDistributions([(next) => next()], ([x]) => x!, seeded(seed), { draws: 10_000 });
    expect(run(3)).toEqual(run(3));
    expect(run(3)).not.toEqual(run(4));
  });
});

import { weibullFit, weibullQuantile } from '../support/formulas/weibull-fit.js';
import { summarise } from '../../../api/measurement/summary/summarise.js';
import { oneSidedToleranceFactor } from '../support/formulas/tolerance-factor.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('tolerance');
const ids = ['T05-bader-priest-20mm', 'T06-weibull-bury', 'T16-weibull-mccool'];

test.each(ids.map((id) => [named(cases[id]!), cases[id]!] as const))('%s', (_name, one) => {
  const { values } = one.inputs;
  const fit = weibullFit(values);
  const { mean, sd } = summarise(values);
  expectReference(one, {
    n: fit.n,
    mean,
    sd,
    shape: fit.shape,
    scale: fit.scale,
    loglik: fit.logLikelihood,
    weibull_mean: fit.mean,
    B10: weibullQuantile(fit, 0.1),
  });
  if ('k_B' in one.expected) {
    const kB = oneSidedToleranceFactor(values.length, 0.9, 0.95);
    expectReference(one, { k_B: kB, B_basis_normal: mean - kB * sd! });
  }
});

const strengths = cases['T16-weibull-mccool']!.inputs.values as number[];

test('a change of unit changes the scale and not the shape; order does not matter', () => {
  const base = weibullFit(strengths);
  const changed = weibullFit([...strengths].reverse().map((value) => value * 1e200));
  expect(changed.shape).toBeCloseTo(base.shape, 10);
  expect(changed.scale / 1e200).toBeCloseTo(base.scale, 9);
});

test('no other shape or scale is likelier', () => {
  const { shape, scale, logLikelihood } = weibullFit(strengths);
  const likelihood = (k: number, s: number): number =>
    strengths.reduce((sum, x) => sum + Math.log(k / s) + (k - 1) * Math.log(x / s) - (x / s) ** k, 0);
  expect(likelihood(shape, scale)).toBeCloseTo(logLikelihood, 9);
  for (const factor of [0.98, 1.02]) {
    expect(likelihood(shape * factor, scale)).toBeLessThan(logLikelihood);
    expect(likelihood(shape, scale * factor)).toBeLessThan(logLikelihood);
  }
});

test('very even strengths still fit', () => {
  const fit = weibullFit([1, 1.000001, 1.000002, 0.999999]);
  expect(fit.shape).toBeGreaterThan(1e5);
  expect(Number.isFinite(fit.logLikelihood)).toBe(true);
});

test('bad input', () => {
  expect(errorCode(() => weibullFit([1, 2]))).toBe('measurement/too-few-readings');
  expect(errorCode(() => weibullFit([2, 2, 2]))).toBe('measurement/no-spread');
  expect(errorCode(() => weibullFit([1, 2, 0]))).toBe('fitting/not-positive');
  expect(errorCode(() => weibullFit([1, 2, NaN]))).toBe('measurement/not-a-number');
  expect(errorCode(() => weibullQuantile({ shape: 1, scale: 1 }, 10))).toBe('distributions/out-of-domain');
});

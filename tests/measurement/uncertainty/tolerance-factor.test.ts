import { normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { specimensForKnownSpread, specimensForOwnSpread } from '../support/formulas/specimens-needed.js';
import {
  howeToleranceFactor,
  oneSidedToleranceFactor,
  readingsForMinimumAsLimit,
  twoSidedToleranceFactor,
} from '../support/formulas/tolerance-factor.js';
import { integrate, solveRising } from '../support/formulas/integrate.js';
import { errorCode } from '../support/error-code.js';
import { expectReference, named, referenceCases } from '../support/reference-cases.js';

const cases = referenceCases('tolerance');

test(named(cases['T01-nist-7263']!), () => {
  const one = cases['T01-nist-7263']!;
  const { n, mean, s, coverage, confidence } = one.inputs;
  const howe = howeToleranceFactor(n, coverage, confidence);
  const oneSided = oneSidedToleranceFactor(n, coverage, confidence);
  expectReference(one, {
    k2_howe: howe,
    k2_exact: twoSidedToleranceFactor(n, coverage, confidence),
    k1_exact_noncentral_t: oneSided,
    two_sided: [mean - howe * s, mean + howe * s],
    upper_one_sided_limit: mean + oneSided * s,
  });
  // Natrella 1963, formula of the handbook: an approximation, computed here only; the core gives the exact factor.
  const [zp, zg] = [normalQuantile(coverage), normalQuantile(confidence)];
  const a = 1 - zg ** 2 / (2 * (n - 1));
  const k1_natrella_approx = (zp + Math.sqrt(zp ** 2 - a * (zp ** 2 - zg ** 2 / n))) / a;
  expectReference(one, { k1_natrella_approx });
  expect(Math.abs(oneSided - k1_natrella_approx)).toBeGreaterThan(0.001);
});

test(named(cases['T02-k-one-sided-90-95']!), () => {
  const { n, coverage, confidence } = cases['T02-k-one-sided-90-95']!.inputs;
  expectReference(cases['T02-k-one-sided-90-95']!, { k: n.map((count: number) => oneSidedToleranceFactor(count, coverage, confidence)) });
});

test.each(['T03-k-two-sided', 'T12-k-two-sided'])('%s (recomputed): ISO 16269-6 two-sided factors', (id) => {
  const { n, coverage, confidence } = cases[id]!.inputs;
  expectReference(cases[id]!, {
    howe: n.map((count: number) => howeToleranceFactor(count, coverage, confidence)),
    exact: n.map((count: number) => twoSidedToleranceFactor(count, coverage, confidence)),
  });
});

test(named(cases['T04-nonparametric-n']!), () => {
  const { rows } = cases['T04-nonparametric-n']!.inputs;
  expectReference(cases['T04-nonparametric-n']!, {
    n: rows.map(([coverage, confidence]: [number, number]) => readingsForMinimumAsLimit(coverage, confidence)),
  });
});

// 0.5 is reached exactly at n = 1; rounding must not make it 2.
test('the smallest sample is found on its border too', () => {
  expect(readingsForMinimumAsLimit(0.5, 0.5)).toBe(1);
  expect(readingsForMinimumAsLimit(0.1, 0.99)).toBe(2);
});

const sampleSize = referenceCases('textile')['X02-sample-size']!;
test(named(sampleSize), () => {
  const rows: [number, number][] = sampleSize.inputs.rows_cv_percent_allowed_error_percent;
  expectReference(sampleSize, {
    'n_with_z_1.96': rows.map(([cv, error]) => specimensForKnownSpread(cv, error, sampleSize.inputs.confidence)),
    n_with_t_smallest_consistent: rows.map(([cv, error]) => specimensForOwnSpread(cv, error, sampleSize.inputs.confidence)),
  });
});

test('the tools of the integration (∫x² = 9 from 0 to 3; cube root of 8)', () => {
  expect(integrate((x) => x * x, 0, 3, 2)).toBeCloseTo(9, 13);
  expect(solveRising((x) => x ** 3, 8, 0, 10)).toBeCloseTo(2, 12);
});

describe('bad input', () => {
  test('too few readings, shares outside (0, 1)', () => {
    for (const run of [oneSidedToleranceFactor, twoSidedToleranceFactor, howeToleranceFactor]) {
      for (const n of [1, 0, 2.5, NaN]) expect(errorCode(() => run(n, 0.9, 0.95))).toBe('measurement/too-few-readings');
      expect(errorCode(() => run(5, 90, 0.95))).toBe('distributions/out-of-domain');
      expect(errorCode(() => run(5, 0.9, 1))).toBe('distributions/out-of-domain');
    }
    expect(errorCode(() => readingsForMinimumAsLimit(1, 0.95))).toBe('distributions/out-of-domain');
    expect(errorCode(() => readingsForMinimumAsLimit(0.9, 0))).toBe('distributions/out-of-domain');
  });

  test('specimens: no spread, no error allowed, or more than anyone can pull', () => {
    expect(errorCode(() => specimensForKnownSpread(0, 3))).toBe('figures/not-positive');
    expect(errorCode(() => specimensForOwnSpread(5, 0))).toBe('figures/not-positive');
    expect(errorCode(() => specimensForOwnSpread(50, 0.01))).toBe('uncertainty/too-many-specimens');
    expect(errorCode(() => specimensForOwnSpread(5, 3, 1))).toBe('distributions/out-of-domain');
  });
});

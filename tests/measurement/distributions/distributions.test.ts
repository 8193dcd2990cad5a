import { chiSquareCdf, chiSquareQuantile } from '../../../api/measurement/distributions/chi-square-distribution.js';
import { fQuantile } from '../../../api/measurement/distributions/f-distribution.js';
import { fCdf } from '../support/formulas/f-cdf.js';
import { logGamma } from '../support/formulas/log-gamma.js';
import { normalCdf, normalQuantile } from '../../../api/measurement/distributions/normal-distribution.js';
import { tCdf, tQuantile } from '../../../api/measurement/distributions/t-distribution.js';
import { errorCode } from '../support/error-code.js';

const wrappers = { normalCdf, normalQuantile, tCdf, tQuantile, chiSquareCdf, chiSquareQuantile, fCdf, fQuantile };

// Arguments, then the value from scipy 1.17.1 (recomputed; the t quantiles are those of any printed t table).
const EXPECTED: Record<keyof typeof wrappers, readonly (readonly number[])[]> = {
  normalCdf: [
    [-8, 6.22096057427174e-16],
    [-3, 0.0013498980316300933],
    [-1.96, 0.024997895148220435],
    [0, 0.5],
    [0.5, 0.6914624612740131],
    [2.5758, 0.9949995762622214],
    [6, 0.9999999990134123],
  ],
  normalQuantile: [
    [1e-10, -6.361340902404056],
    [0.001, -3.090232306167813],
    [0.025, -1.9599639845400545],
    [0.9, 1.2815515655446004],
    [0.975, 1.959963984540054],
    [0.9999, 3.719016485455709],
  ],
  tCdf: [
    [-4, 1, 0.07797913037736932],
    [-2, 3, 0.06966298427942152],
    [0.3, 9.5, 0.6146808209944098],
    [1.8, 16.785764, 0.9550704679125078],
    [2.26, 9, 0.9749117021089289],
    [5, 30, 0.9999883516572665],
    [-1.96, 1000000.0, 0.024998033792634926],
  ],
  tQuantile: [
    [0.975, 1, 12.706204736174694],
    [0.975, 2, 4.302652729749462],
    [0.975, 9, 2.262157162798205],
    [0.995, 16, 2.9207816224251],
    [0.95, 31.98, 1.6939203207582163],
    [0.001, 5, -5.893429531356009],
    [0.9975, 6, 4.316827103633413],
    [0.975, 1000000.0, 1.959966356814107],
  ],
  chiSquareCdf: [
    [0.1, 1, 0.24817036595415076],
    [3.84, 1, 0.9499564787512949],
    [9.5, 9, 0.607544239665194],
    [40, 42, 0.4409074157686748],
    [100, 68, 0.9930212354381082],
  ],
  chiSquareQuantile: [
    [0.95, 1, 3.841458820694124],
    [0.01, 42, 23.65009467782619],
    [0.05, 9, 3.325112843066815],
    [0.999, 2.5, 15.082186971981955],
    [1e-6, 4, 0.0028297613229586872],
  ],
  fCdf: [
    [1, 5, 5, 0.49999999999999983],
    [4.1, 2, 10, 0.9499224515189161],
    [0.2, 7, 3, 0.03667335421818645],
    [12, 1, 8, 0.9914837366290988],
  ],
  fQuantile: [
    [0.95, 2, 10, 4.1028210151304],
    [0.99, 2, 8, 8.649110640673515],
    [0.99875, 1, 7, 27.06276872189377],
    [0.01, 4, 9, 0.06821685571671406],
  ],
};

// Relative; the library's normal quantile loses a digit in the far tail (2e-9 at p = 1e-10).
const ALLOWED = { default: 1e-9, normalQuantile: 3e-9 };

test.each(Object.keys(EXPECTED) as (keyof typeof wrappers)[])('%s agrees with scipy', (name) => {
  for (const row of EXPECTED[name]) {
    const found = (wrappers[name] as (...args: number[]) => number)(...row.slice(0, -1));
    const expected = row.at(-1)!;
    expect(Math.abs(found - expected)).toBeLessThanOrEqual(
      (name === 'normalQuantile' ? ALLOWED.normalQuantile : ALLOWED.default) * Math.max(Math.abs(expected), 1e-12),
    );
  }
});

test('infinite degrees of freedom are the limiting distribution', () => {
  expect(tCdf(1.3, Infinity)).toBe(normalCdf(1.3));
  expect(tQuantile(0.9, Infinity)).toBe(normalQuantile(0.9));
  expect(fQuantile(0.95, 3, Infinity)).toBeCloseTo(fQuantile(0.95, 3, 1e8), 5);
  expect(fCdf(2, 3, Infinity)).toBeCloseTo(fCdf(2, 3, 1e8), 6);
});

test('a quantile undoes its distribution', () => {
  for (const p of [0.001, 0.05, 0.5, 0.9, 0.999]) {
    expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 12);
    expect(tCdf(tQuantile(p, 4.5), 4.5)).toBeCloseTo(p, 10);
    expect(chiSquareCdf(chiSquareQuantile(p, 7), 7)).toBeCloseTo(p, 10);
    expect(fCdf(fQuantile(p, 3, 11), 3, 11)).toBeCloseTo(p, 10);
  }
});

test('ends of the line have probability 0 and 1', () => {
  expect([normalCdf(-Infinity), normalCdf(Infinity), tCdf(-Infinity, 3), tCdf(Infinity, 3)]).toEqual([0, 1, 0, 1]);
  expect([chiSquareCdf(-1, 3), chiSquareCdf(Infinity, 3), fCdf(-1, 2, 3), fCdf(Infinity, 2, 3)]).toEqual([0, 1, 0, 1]);
});

describe('outside the domain', () => {
  test.each([0, 1, -0.1, 1.1, 95, NaN])('a probability of %p is refused', (p) => {
    for (const run of [() => normalQuantile(p), () => tQuantile(p, 3), () => chiSquareQuantile(p, 3), () => fQuantile(p, 2, 3)]) {
      expect(errorCode(run)).toBe('distributions/out-of-domain');
    }
  });

  test.each([0, -1, NaN])('degrees of freedom of %p are refused', (degrees) => {
    const runs = [
      () => tCdf(1, degrees),
      () => tQuantile(0.5, degrees),
      () => chiSquareCdf(1, degrees),
      () => chiSquareQuantile(0.5, degrees),
      () => fCdf(1, degrees, 3),
      () => fCdf(1, 3, degrees),
      () => fQuantile(0.5, degrees, 3),
      () => fQuantile(0.5, 3, degrees),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('distributions/out-of-domain');
  });

  test('infinite degrees of freedom are refused where there is no limit', () => {
    const runs = [
      () => chiSquareCdf(1, Infinity),
      () => chiSquareQuantile(0.5, Infinity),
      () => fCdf(1, Infinity, 3),
      () => fQuantile(0.5, Infinity, 3),
    ];
    for (const run of runs) expect(errorCode(run)).toBe('distributions/out-of-domain');
  });

  test('NaN as argument is refused', () => {
    for (const run of [() => normalCdf(NaN), () => tCdf(NaN, 3), () => chiSquareCdf(NaN, 3), () => fCdf(NaN, 2, 3)]) {
      expect(errorCode(run)).toBe('distributions/out-of-domain');
    }
  });
});

// Γ(5) = 24, Γ(1/2) = √π, Γ(171) = 170! (exact identities)
test('logarithm of the gamma function', () => {
  expect(logGamma(5)).toBeCloseTo(Math.log(24), 13);
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
  expect(logGamma(0.1)).toBeCloseTo(2.252712651734206, 12);
  expect(logGamma(1)).toBeCloseTo(0, 13);
  expect(logGamma(0.001)).toBeCloseTo(6.907178885383853, 11);
  const factorial = Array.from({ length: 170 }, (_, i) => Math.log(i + 1)).reduce((a, b) => a + b);
  expect(logGamma(171)).toBeCloseTo(factorial, 9);
  for (const x of [0, -1, NaN, Infinity]) expect(errorCode(() => logGamma(x))).toBe('distributions/out-of-domain');
});

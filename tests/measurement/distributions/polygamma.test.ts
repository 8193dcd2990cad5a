import { digamma, inverseTrigamma, trigamma } from '../../../api/measurement/distributions/polygamma.js';
import { errorCode } from '../support/error-code.js';

// scipy 1.17.1, special.digamma and special.polygamma(1, x): recomputed
test.each([
  [0.1, -10.423754940411076, 101.43329915],
  [0.5, -1.9635100260214235, 4.9348022],
  [1, -0.5772156649015329, 1.64493407],
  [2.5, 0.7031566406452432, 0.49035776],
  [9.9, 2.2411803166063815, 0.10628304],
  [37, 3.597343531893106, 0.02739555],
])('digamma and trigamma of %d', (x, first, second) => {
  expect(digamma(x)).toBeCloseTo(first, 11);
  expect(trigamma(x) / second).toBeCloseTo(1, 6);
});

test('trigamma(1) is π²/6, and its inverse undoes it', () => {
  expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 13);
  for (const x of [1e-4, 0.01, 0.3, 1, 2.565, 40, 1e4, 1e7]) expect(inverseTrigamma(trigamma(x)) / x).toBeCloseTo(1, 6);
});

test('arguments outside (0, ∞) are refused', () => {
  for (const run of [digamma, trigamma, inverseTrigamma]) {
    for (const x of [0, -1, Infinity, NaN]) expect(errorCode(() => run(x))).toBe('distributions/out-of-domain');
  }
});

import { specimensToTell } from '../../../api/measurement/ranking/planning/specimens-to-tell.js';
import { errorCode } from '../support/error-code.js';

// Smallest n with 80 % power of the two-sample t test by the noncentral t distribution, scipy 1.17.1: recomputed
test.each([
  [2, 9],
  [5, 45],
  [8, 113],
])('planning aid: CV %d %% needs %d specimens for 3 %%', (cvPercent, n) => {
  expect(Math.abs(specimensToTell(cvPercent) - n)).toBeLessThanOrEqual(1);
});

test('planning aid: its limits', () => {
  expect(specimensToTell(0.01)).toBe(2);
  expect(specimensToTell(5, 6)).toBeLessThan(specimensToTell(5, 3));
  expect(errorCode(() => specimensToTell(0))).toBe('figures/not-positive');
  expect(errorCode(() => specimensToTell(5, -1))).toBe('figures/not-positive');
  expect(errorCode(() => specimensToTell(5, 3, 1))).toBe('distributions/out-of-domain');
  expect(errorCode(() => specimensToTell(5, 3, 0.8, 0))).toBe('distributions/out-of-domain');
  expect(errorCode(() => specimensToTell(50_000, 3))).toBe('uncertainty/too-many-specimens');
});

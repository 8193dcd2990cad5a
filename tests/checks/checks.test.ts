import { CHECKS } from '../../api/checks/check-list.js';
import { CASES, knot, STATIONS, WEAKER, WEIGHED } from './check-cases.js';
import { balance, codesOf, diameters, FORCES, lengthMeasure, micrometer } from './check-input.js';

test('no check minds a submission as it should be', () => {
  expect(codesOf()).toEqual([]);
  expect(codesOf({ ...knot(FORCES, WEAKER), limits: { timeToBreakS: null } })).toEqual([]);
  expect(codesOf({ method: 'diameter', specimens: diameters(STATIONS), instruments: [micrometer] })).toEqual([]);
  expect(codesOf({ method: 'linear-density', specimens: WEIGHED, instruments: [balance, lengthMeasure] })).toEqual([]);
});

test.each(CASES)('%s: %s', (code, _, trigger, nearMiss) => {
  expect(codesOf(trigger)).toContain(code);
  expect(codesOf(nearMiss)).not.toContain(code);
});

test('every check of the list has such a case, here or in a test of its own', () => {
  const ofTheirOwn = ['readings/identical-beyond-chance', 'readings/terminal-digits'];
  const covered = new Set([...CASES.map(([code]) => code), ...ofTheirOwn]);
  expect(CHECKS.map(({ code }) => code).filter((code) => !covered.has(code))).toEqual([]);
});

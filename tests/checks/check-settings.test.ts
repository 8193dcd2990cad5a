import { checkSetOf } from '../../api/checks/check-set-of.js';
import { checkSettingFaults, severitiesOf } from '../../api/checks/check-settings.js';
import { CHECKS } from '../../api/checks/check-list.js';
import { checkSubmission } from '../../api/checks/check-submission.js';

import { checkInput, codesOf, findingsOf, FORCES, instrument, pulls } from './check-input.js';
import type { Case } from './check-input.js';

const falling: Partial<Case> = { specimens: pulls(['37.1', '36.9', '36.8', '36.5', '36.6', '36.2', '36.1', '35.9']) };
const claimed = (ratio: number): Partial<Case> => ({
  claims: [{ quantity: 'breakingForce', valueSi: String((36.62375 * 4.4482216152605) / ratio) }],
});
const threeInvalid: Partial<Case> = {
  specimens: pulls(FORCES).map((specimen, i) => (i < 3 ? { ...specimen, validity: 'invalid', invalidReason: 'slipped' } : specimen)),
};

/** A submission that passes as the check is by itself, and a limit of the method version at which it does not; or the other way round. */
const CASES: readonly (readonly [code: string, limit: string, value: number, submission: Partial<Case>, isFoundByItself: boolean])[] = [
  ['date/long-past', 'days', 10, { benchDay: '2026-01-02' }, false],
  ['date/long-past', 'days', 90, { benchDay: '2025-11-18' }, true],
  ['specimens/many-invalid', 'sharePercent', 30, threeInvalid, false],
  ['instruments/too-coarse', 'sharePercent', 0.5, { instruments: [instrument({ resolutionSi: '1.5' })] }, false],
  ['readings/drift-in-order', 'leastSpecimens', 9, falling, true],
  ['figures/far-from-label', 'highPercent', 150, claimed(1.6), false],
  ['figures/far-from-label', 'lowPercent', 80, claimed(0.7), false],
  // 36.52 lbf is 162.449 N.
  ['trace/peak-differs', 'percent', 0.5, { input: { traces: [{ specimen: 1, peakForceN: 162.449 * 1.008 }] } }, false],
  [
    'label/against-itself',
    'tolerancePercent',
    10,
    {
      claims: [
        { quantity: 'peNumber', valueSi: '1.5' },
        { quantity: 'diameter', valueSi: '0.000198' },
      ],
    },
    true,
  ],
];

test.each(CASES)('%s: a method version moves %s to %d', (code, limit, value, submission, isFoundByItself) => {
  expect(codesOf(submission).includes(code)).toBe(isFoundByItself);
  expect(codesOf({ ...submission, checks: { [code]: { limits: { [limit]: value } } } }).includes(code)).toBe(!isFoundByItself);
});

test('a method version sets what a finding does, where the check allows it', () => {
  const severity = (checks: Case['checks']) =>
    findingsOf({ ...threeInvalid, ...(checks ? { checks } : {}) }).find(({ code }) => code === 'specimens/many-invalid')?.severity;
  const strict = { 'specimens/many-invalid': { severity: 'blocks', limits: { sharePercent: 30 } } } as const;
  expect(severity(strict)).toBe('blocks');
  expect(severity({ 'specimens/many-invalid': { limits: { sharePercent: 30 } } })).toBe('held');
});

test('what an edition pinned stays: limits, severities, and no check that came later', () => {
  const pinned = checkSetOf().checks.map((check) =>
    check.code === 'date/long-past'
      ? { ...check, severity: 'held' as const, limits: check.limits!.map((limit) => ({ ...limit, value: '5' })) }
      : check,
  );
  const input = checkInput({ benchDay: '2026-01-10' });
  expect(checkSubmission(input).map(({ code }) => code)).toEqual([]);
  expect(checkSubmission(input, pinned)).toMatchObject([{ code: 'date/long-past', severity: 'held' }]);
  expect(
    checkSubmission(
      input,
      pinned.filter(({ code }) => code !== 'date/long-past'),
    ),
  ).toEqual([]);
  // An edition that was opened before checks had limits of their own: what it did not pin is as the program has it.
  const bare = checkSetOf().checks.map(({ code, title, severity, explains, limit }) => ({ code, title, severity, explains, limit }));
  expect(
    checkSubmission(
      checkInput({ benchDay: '2025-11-18', effectiveFrom: '2025-01-01', input: { opensOn: '2025-11-01', obtainedOn: '2025-10-01' } }),
      bare,
    ).map(({ code }) => code),
  ).toEqual(['date/long-past']);
});

test('what a check does not allow is told, with its place', () => {
  const faults = checkSettingFaults({
    'no/such': {},
    'readings/outlier': { severity: 'blocks' },
    'date/long-past': { limits: { days: 0, weeks: 3 } },
    'specimens/many-invalid': { severity: 'note', limits: { sharePercent: 99 } },
  });
  expect(faults.map(({ pointer, code }) => [pointer, code])).toEqual([
    ['/checks/no~1such', 'unknown_check'],
    ['/checks/readings~1outlier/severity', 'severity_not_allowed'],
    ['/checks/date~1long-past/limits/days', 'out_of_range'],
    ['/checks/date~1long-past/limits/weeks', 'unknown_limit'],
  ]);
  expect(faults[2]!.detail).toMatch(/found 0, expected 1 to 3650 d/);
});

test('each check says where it comes from and gives an example; its own numbers lie within what may be set', () => {
  for (const check of CHECKS) {
    expect([check.code, check.source.length > 5, check.example.length > 10]).toEqual([check.code, true, true]);
    expect(severitiesOf(check)).toContain(check.severity);
    for (const { value, atLeast, atMost } of Object.values(check.limits ?? {})) expect(value >= atLeast && value <= atMost).toBe(true);
  }
});

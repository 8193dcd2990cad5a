import type { InstrumentOnRecord } from '../../api/instruments/instruments.read-model.js';
import { uuid7 } from '../../api/platform/identifiers/uuid7.js';
import { dateAtBench } from '../../api/contract/bench-day.js';
import { handInOf } from '../../api/submissions/intake/intake.js';
import { readingsDigest } from '../../api/readings/readings-digest.js';
import { toSpecimensInSi } from '../../api/readings/readings-si.js';
import { specimenContent } from '../../api/contract/submission-content.js';
import type { SubmissionContent } from '../../api/contract/submission-content.js';
import { readSubmission } from '../../api/submissions/examine/read-submission.js';
import { certificateOn, subjectChanges } from '../../api/submissions/examine/subject.js';
import type { SoughtSubject, Subject } from '../../api/submissions/examine/subject.js';
import { referenceOf } from '../../api/submissions/submission.js';

test('a reference has four digits, and more when they run out', () => {
  expect(referenceOf('2026', 7)).toBe('S-2026-0007');
  expect(referenceOf('winter-2026', 12_345)).toBe('S-winter-2026-12345');
});

test('the date at the bench follows its zone', () => {
  // UTC+14 and UTC−11: IANA time zone database, Pacific/Kiritimati and Pacific/Pago_Pago.
  const now = new Date('2026-03-15T10:30:00Z');
  expect(dateAtBench(now, 'Pacific/Kiritimati')).toBe('2026-03-16');
  expect(dateAtBench(now, 'Pacific/Pago_Pago')).toBe('2026-03-14');
  expect(dateAtBench(now, 'UTC')).toBe('2026-03-15');
});

const specimen = (number: number, value: string, unit: string, condition = 'untreated') =>
  specimenContent.parse({ number, condition, readings: [{ role: 'breakingForce', value, unit }] });
const digestOf = (...specimens: ReturnType<typeof specimen>[]) => readingsDigest(toSpecimensInSi(specimens));

test('the digest is of the readings in SI: unit and order of typing do not matter, value, number and condition do', () => {
  const digest = digestOf(specimen(1, '20', 'lbf'), specimen(2, '90', 'N'));
  expect(digest).toMatch(/^[0-9a-f]{64}$/);
  // 20 lbf = 88.96443230521 N exactly (NIST SP 811, appendix B).
  expect(digestOf(specimen(2, '0.09', 'kN'), specimen(1, '88.96443230521', 'N'))).toBe(digest);
  expect(digestOf(specimen(1, '20.01', 'lbf'), specimen(2, '90', 'N'))).not.toBe(digest);
  expect(digestOf(specimen(1, '20', 'lbf', 'treated'), specimen(2, '90', 'N'))).not.toBe(digest);
  expect(digestOf(specimen(1, '90', 'N'), specimen(2, '20', 'lbf'))).not.toBe(digest);
});

const BEFORE = { editionId: 'e', spoolId: 's', methodVersionId: 'm', state: 'returned' };
const subject = (edition: string, spool: string, method: string) =>
  ({ edition: { id: edition }, spool: { id: spool }, method: { id: method } }) as unknown as Subject;
const changedCodes = (before: typeof BEFORE, after: Subject) => subjectChanges(before, after).map(({ code }) => code);

test('what was handed in stays with its edition, spool and method version; a draft with its edition', () => {
  expect(changedCodes(BEFORE, subject('e', 's', 'm'))).toEqual([]);
  expect(changedCodes(BEFORE, subject('f', 't', 'n'))).toEqual(['other_edition', 'other_spool', 'other_method_version']);
  expect(changedCodes({ ...BEFORE, state: 'draft' }, subject('e', 't', 'n'))).toEqual([]);
  expect(changedCodes({ ...BEFORE, state: 'draft' }, subject('f', 's', 'm'))).toEqual(['other_edition']);
});

test('the certificate is the one in force on the bench day, its first and last day included; of two the later', () => {
  const instrument = {
    calibrations: [
      { certificate: 'C-1', validFrom: '2026-01-01', validUntil: '2026-06-30' },
      { certificate: 'C-2', validFrom: '2026-06-01', validUntil: '2026-12-31' },
    ],
  } as unknown as InstrumentOnRecord;
  const days = ['2025-12-31', '2026-01-01', '2026-06-15', '2026-12-31', '2027-01-01'];
  expect(days.map((day) => certificateOn(day, instrument))).toEqual([null, 'C-1', 'C-2', 'C-2', null]);
});

test('figures that cannot be computed are a fault of the input, not a failure', () => {
  const readings = [
    { role: 'wideDiameter', station: 1, value: '0.20', unit: 'mm' },
    { role: 'narrowDiameter', station: 1, value: '0.25', unit: 'mm' },
  ];
  const content = {
    instruments: [],
    specimens: [{ number: 1, condition: 'untreated', validity: 'valid', readings }],
    ambient: { temperature: { value: '20', unit: '°C' } },
  };
  const sought = {
    edition: { slug: 'e', state: 'open', hasEntry: () => true, methodVersionIds: ['m'] },
    spool: { variant: { id: 'v', densityGPerCm3: 0.97 } },
    method: { id: 'm', parameters: { areaFrom: 'circle' } },
  };
  const faults = readSubmission('t', handInOf(content as unknown as SubmissionContent), sought as unknown as SoughtSubject, []);
  expect(faults).toEqual([expect.objectContaining({ pointer: '/specimens', code: 'figures/wide-below-narrow' })]);
});

test('identifiers of version 7 sort as they were made, also within a millisecond', () => {
  const made = Array.from({ length: 10_000 }, () => uuid7());
  expect([...made].sort()).toEqual(made);
  expect(new Set(made).size).toBe(made.length);
  // RFC 9562, section 5.7: version 7, variant 10.
  expect(made.every((id) => /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(id))).toBe(true);
});

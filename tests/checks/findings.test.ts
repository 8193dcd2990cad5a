import { checkSetOf } from '../../api/checks/check-set-of.js';
import { CHECK_SET_VERSION, CHECKS } from '../../api/checks/check-list.js';
import { findingForTester, LOOK_AGAIN } from '../../api/checks/finding.js';
import { specimenWords } from '../../api/checks/specimen-words.js';
import { checkDocumentSchema } from '../../api/contract/documents/release-documents.js';
import { codesOf, findingsOf, FORCES, instrument, pulls } from './check-input.js';

const CLAIM = { claims: [{ quantity: 'breakingForce', valueSi: '73.8943' }] };
const findingOf = (code: string, change: Parameters<typeof findingsOf>[0]) => findingsOf(change).find((finding) => finding.code === code)!;

test('a finding gives the numbers that it saw and the limit that it used', () => {
  expect(findingOf('specimens/spread-too-wide', { limits: { maximumCvPercent: 1 } })).toMatchObject({
    severity: 'held',
    actual: '1.4 %',
    expected: 'at most 1 %',
  });
  expect(findingOf('figures/unit-slip', CLAIM)).toMatchObject({ actual: '2.2046', specimens: [1, 2, 3, 4, 5, 6, 7, 8], forTester: null });
});

test('an outlier is held and names its specimen; it is never removed', () => {
  const change = { specimens: pulls([...FORCES.slice(0, 7), '33.00']) };
  expect(findingOf('readings/outlier', change)).toMatchObject({ severity: 'held', specimens: [8] });
  expect(codesOf({ ...change, limits: { minimumSpecimens: 8 } })).not.toContain('specimens/too-few-valid');
});

test('invalid specimens are no outliers, did not break too fast, and have no unit to look at', () => {
  const invalid = { validity: 'invalid', invalidReason: 'slipped' };
  const far = pulls([...FORCES.slice(0, 7), '20.00'], { times: ['18', '18', '18', '18', '18', '18', '18', '3'] });
  const withoutIt = { specimens: far.map((specimen) => (specimen.number === 8 ? { ...specimen, ...invalid } : specimen)) };
  expect(codesOf({ specimens: far })).toEqual(expect.arrayContaining(['readings/outlier', 'specimens/time-to-break']));
  expect(codesOf(withoutIt)).toEqual([]);
  expect(findingOf('figures/unit-slip', { ...CLAIM, ...withoutIt }).specimens).toEqual([1, 2, 3, 4, 5, 6, 7]);
});

test('the tester of an outlier reads which specimen, not how far off nor in which direction', () => {
  const { message } = findingForTester(findingOf('readings/outlier', { specimens: pulls([...FORCES.slice(0, 7), '33.00']) }))!;
  expect(message).toBe('Look at specimen 8 again.');
});

test('a claim never shows in what a tester reads, whatever the checks find', () => {
  const all = findingsOf({
    ...CLAIM,
    seenLabel: true,
    limits: { maximumCvPercent: 1, minimumSpecimens: 20 },
    input: { knownAreaMm2: 0.02, rigEvidence: 'outOfControl', hasDeclaredInterest: true, sameReadingsAs: ['S-2026-0003'] },
  });
  expect(all.length).toBeGreaterThanOrEqual(8);
  const read = JSON.stringify(all.map(findingForTester));
  expect(read).not.toMatch(/claim|73\.89|2\.2|UHMWPE|maker|interest|S-2026/i);
});

test('one finding for a thousand readings with the same fault, its words short', () => {
  const specimens = pulls(Array.from({ length: 1000 }, (_, i) => (360 + (i % 97) / 10).toFixed(1)));
  const found = findingsOf({ specimens, instruments: [instrument({ capacitySi: '500' })] }).filter(
    ({ code }) => code === 'readings/beyond-capacity',
  );
  expect(found).toHaveLength(1);
  expect(found[0]!.specimens).toHaveLength(1000);
  expect(found[0]!.message).toContain('1–1000');
});

test('a rig that is out or unknown is held, and never blocks the pull that clears it', () => {
  for (const rigEvidence of ['outOfControl', 'noEvidence'] as const) {
    expect(findingsOf({ input: { rigEvidence } }).map(({ severity }) => severity)).toEqual(['held']);
  }
});

test('numbers of specimens are written as people write them', () => {
  expect(specimenWords([1, 2, 3, 5, 8, 9])).toBe('1–3, 5, 8–9');
  expect(specimenWords([4, 4])).toBe('4');
  expect(specimenWords(Array.from({ length: 50 }, (_, i) => 2 * i))).toMatch(/^0, 2, .*, 38, … \(50 in all\)$/);
});

const CHECK_CATALOGUE = checkSetOf().checks;

test('the catalogue has every check once, in words, as the release documents have it', () => {
  for (const entry of CHECK_CATALOGUE) expect(checkDocumentSchema.parse(entry)).toEqual(entry);
  expect(new Set(CHECK_CATALOGUE.map(({ code }) => code)).size).toBe(CHECKS.length);
  expect(CHECKS.length).toBeGreaterThanOrEqual(35);
  expect(CHECK_SET_VERSION).toBeGreaterThanOrEqual(1);
  for (const { code, explains, limit } of CHECK_CATALOGUE) {
    expect(code).toMatch(/^[a-z]+\/[a-z-]+$/);
    expect(explains.length).toBeGreaterThan(30);
    expect(limit.length).toBeGreaterThan(10);
  }
});

test('the catalogue tells what a tester reads in place of a finding, and of which nothing', () => {
  const explains = (code: string) => CHECK_CATALOGUE.find((check) => check.code === code)!.explains;
  expect(explains('figures/retention-above-whole')).toContain(LOOK_AGAIN);
  expect(explains('figures/unit-slip')).toContain('told nothing');
  for (const words of [LOOK_AGAIN, 'told nothing']) expect(explains('readings/outlier')).not.toContain(words);
});

import { findingForTester } from '../../api/checks/finding.js';
import { findingsOf, FORCES, pulls } from './check-input.js';
import type { Case } from './check-input.js';

const off = (forces: readonly string[], factor: number) => forces.map((force) => (Number(force) * factor).toFixed(2));
const knot = (factor: number): Partial<Case> => ({
  method: 'named-knot',
  specimens: [...pulls(FORCES), ...pulls(off(FORCES, factor), { condition: 'treated', from: 101 })],
});
const claimed = (valueSi: string): Partial<Case> => ({ claims: [{ quantity: 'breakingForce', valueSi }] });

/** Submissions with an anomaly, in pairs of opposite direction or different size: their testers must read the same. */
const PAIRS: readonly (readonly [code: string, one: Partial<Case>, other: Partial<Case>])[] = [
  ['figures/retention-above-whole', knot(1.3), knot(2.1)],
  ['readings/outlier', { specimens: pulls([...FORCES.slice(0, 7), '30.00']) }, { specimens: pulls([...FORCES.slice(0, 7), '48.00']) }],
];

/** Submissions with an anomaly that is seen beside a label, a maker, a variant or others' results: their testers must read nothing. Mean of FORCES: 162.91 N. */
const FOR_REVIEWERS: readonly (readonly [code: string, one: Partial<Case>])[] = [
  ['figures/unit-slip', claimed('73.89')],
  ['figures/unit-slip', claimed('359.15')],
  ['figures/far-from-label', claimed('500')],
  ['figures/beyond-the-fibre', { input: { knownAreaMm2: 0.001 } }],
  ['date/before-its-time', { input: { obtainedOn: '2026-02-03' } }],
  ['readings/same-as-earlier', { input: { sameReadingsAs: ['S-2026-0003'] } }],
  ['tester/declared-interest', { input: { hasDeclaredInterest: true } }],
  ['tester/many-previews', { input: { previews: 500 } }],
  ['retest/same-hands', { input: { secondTime: ['R1 pulled it the first time'] } }],
];

test.each(FOR_REVIEWERS)('%s: its tester reads nothing of it, the reviewer all', (code, one) => {
  const found = findingsOf(one);
  expect(found.filter((finding) => finding.code === code)).toMatchObject([
    { severity: expect.stringMatching(/held|note/), forTester: null },
  ]);
  expect(found.flatMap((finding) => findingForTester(finding) ?? [])).toEqual(
    findingsOf().flatMap((finding) => findingForTester(finding) ?? []),
  );
});

const readBy = (code: string, change: Partial<Case>) => {
  const found = findingsOf(change).filter((finding) => finding.code === code);
  expect(found).toHaveLength(1);
  return findingForTester(found[0]!)!;
};

test.each(PAIRS)('%s: its tester reads the same whatever its size, its direction and the label are', (code, one, other) => {
  expect(readBy(code, one)).toEqual(readBy(code, other));
});

test.each(PAIRS)('%s: its tester reads no number but those of specimens', (code, one) => {
  const { message } = readBy(code, one);
  expect(message.replace(/specimens? [\d–, ]+/, '')).not.toMatch(/\d/);
  expect(message).not.toMatch(/claim|label says|ratio|maker|line |above|below|high|low|large|small|strong|weak|%/i);
});

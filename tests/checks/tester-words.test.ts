import { findingForTester, LOOK_AGAIN, sealedAfter } from '../../api/checks/finding.js';
import { findingsOf, FORCES, micrometer, diameters, pulls } from './check-input.js';
import type { Case } from './check-input.js';

const off = (forces: readonly string[], factor: number) => forces.map((force) => (Number(force) * factor).toFixed(2));
const knot = (factor: number): Partial<Case> => ({
  method: 'named-knot',
  specimens: [...pulls(FORCES), ...pulls(off(FORCES, factor), { condition: 'treated', from: 101 })],
});
const claimed = (valueSi: string): Partial<Case> => ({ claims: [{ quantity: 'breakingForce', valueSi }] });
const STATIONS = [0, 3, 5, 2, 4].map((step) => [[`0.26${step}`, `0.25${step}`] as const]);

/** Submissions with an anomaly, in pairs of opposite direction or different size: their testers must read the same. */
const PAIRS: readonly (readonly [code: string, one: Partial<Case>, other: Partial<Case>])[] = [
  // Mean of FORCES: 162.91 N
  ['figures/unit-slip', claimed('73.89'), claimed('359.15')],
  ['figures/unit-slip', claimed('16.61'), claimed('4137.9')],
  [
    'figures/unit-slip',
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      claims: [{ quantity: 'diameter', valueSi: '0.00001015' }],
    },
    {
      method: 'diameter',
      specimens: diameters(STATIONS),
      instruments: [micrometer],
      claims: [{ quantity: 'diameter', valueSi: '0.006548' }],
    },
  ],
  ['figures/beyond-the-fibre', { input: { knownAreaMm2: 0.001 } }, { material: 'Nylon', input: { knownAreaMm2: 0.12 } }],
  ['date/before-its-time', { input: { opensOn: '2026-01-18' } }, { input: { obtainedOn: '2026-02-03' } }],
  ['figures/retention-above-whole', knot(1.3), knot(2.1)],
  ['readings/outlier', { specimens: pulls([...FORCES.slice(0, 7), '30.00']) }, { specimens: pulls([...FORCES.slice(0, 7), '48.00']) }],
  [
    'readings/same-as-earlier',
    { input: { sameReadingsAs: ['S-2026-0003'] } },
    { input: { sameReadingsAs: ['S-2025-0711', 'S-2025-0712'] } },
  ],
];

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

test('from the fourth hand-in of a spool on its tester reads no sealed finding; the reviewer still does', () => {
  const found = findingsOf(claimed('73.89'));
  expect(found.map(({ code }) => code)).toContain('figures/unit-slip');
  const read = (handIns: number) => sealedAfter(handIns, found).flatMap((finding) => findingForTester(finding) ?? []);
  expect(read(3)).toEqual(read(1));
  expect(read(1).map(({ code }) => code)).toContain(LOOK_AGAIN);
  expect(read(4)).toEqual(read(1).filter(({ code }) => code !== LOOK_AGAIN));
  expect(sealedAfter(4, found).map(({ message }) => message)).toEqual(found.map(({ message }) => message));
});

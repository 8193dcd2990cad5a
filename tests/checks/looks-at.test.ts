import type { CheckInput } from '../../api/checks/check-input.js';
import { SEALED_INPUTS } from '../../api/checks/check-input.js';
import { CHECKS } from '../../api/checks/check-list.js';
import { checkSubmission, PREVIEW_CHECKS } from '../../api/checks/check-submission.js';
import { CASES } from './check-cases.js';
import { checkInput } from './check-input.js';

const INPUTS = [...CASES.flatMap(([, , trigger, nearMiss]) => [trigger, nearMiss]), {}].map((change) => checkInput(change));

/** What a check reads of these submissions, by name. */
function readBy(check: (typeof CHECKS)[number]): string[] {
  const read = new Set<string>();
  const numbers = Object.fromEntries(Object.entries(check.limits ?? {}).map(([name, { value }]) => [name, value]));
  for (const input of INPUTS) {
    const watched = new Proxy(input, {
      get(target, name) {
        read.add(String(name));
        return target[name as keyof CheckInput];
      },
    });
    check.run(watched, numbers);
  }
  return [...read].sort();
}

test.each(CHECKS.map((check) => [check.code, check] as const))('%s looks at all that it declares, and at nothing else', (_, check) => {
  expect(readBy(check)).toEqual([...check.looksAt].sort());
});

test('a check is handed what it declares, and nothing else', () => {
  const check = { ...CHECKS[0]!, looksAt: ['content'] as const, run: (input: CheckInput) => (names.push(...Object.keys(input)), []) };
  const names: string[] = [];
  checkSubmission(INPUTS[0]!, null, [check]);
  expect(names).toEqual(['content']);
});

test('what comes from a label, a maker, a variant or others is for reviewers, and not told in a preview', () => {
  const silent = CHECKS.filter((check) => !PREVIEW_CHECKS.includes(check)).map(({ code }) => code);
  expect(silent).toEqual([
    'date/before-its-time',
    'figures/unit-slip',
    'figures/far-from-label',
    'figures/beyond-the-fibre',
    'readings/same-as-earlier',
    'tester/declared-interest',
    'tester/many-previews',
    'retest/same-hands',
    'label/against-itself',
  ]);
  // All of the input that is not the tester's own, an instrument, a method or the clock.
  expect([...SEALED_INPUTS].sort()).toEqual([
    'hasDeclaredInterest',
    'knownAreaMm2',
    'obtainedOn',
    'previews',
    'sameDayRatios',
    'sameReadingsAs',
    'secondTime',
    'variant',
  ]);
});

test('no submission of the cases makes a preview say what rests on its variant', () => {
  for (const input of INPUTS) {
    const other = {
      ...input,
      variant: { material: 'Nylon', densityGPerCm3: 1.14, claims: [{ quantity: 'breakingForce', valueSi: '3' }] },
      knownAreaMm2: 0.001,
      hasDeclaredInterest: true,
      sameDayRatios: [0.45, 0.46],
      sameReadingsAs: ['S-2026-0001'],
      obtainedOn: '2030-01-01',
      previews: 999,
      secondTime: ['R1 pulled it the first time'],
    };
    expect(checkSubmission(other, null, PREVIEW_CHECKS)).toEqual(checkSubmission(input, null, PREVIEW_CHECKS));
  }
});

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const beforeItsTime: Check = {
  code: 'date/before-its-time',
  title: 'Bench day before the edition or before the spool',
  severity: 'held',
  isSealed: true,
  looksAt: ['content', 'opensOn', 'obtainedOn'],
  explains:
    'Nobody pulls a spool before it was obtained, nor for an edition before it opens: the date is a slip, or another spool was pulled. When a spool was obtained may tell what it is, so that its tester reads no date.',
  limit: 'First day of the edition ≤ bench day; day on which the spool was obtained ≤ bench day.',
  source: 'common practice',
  example: 'A spool bought on 3 February whose pulls are dated 30 January.',
  run({ content: { benchDay }, opensOn, obtainedOn }) {
    const early = [
      ...(benchDay < opensOn ? [`the edition opens on ${opensOn}`] : []),
      ...(benchDay < obtainedOn ? [`the spool was obtained on ${obtainedOn}`] : []),
    ];
    if (early.length === 0) return [];
    return [
      observe(`The bench day is ${benchDay}, but ${early.join(' and ')}. Check the date and the code on the spool.`, {
        actual: benchDay,
        expected: `on or after ${opensOn > obtainedOn ? opensOn : obtainedOn}`,
        pointer: '/benchDay',
        forTester: 'Check the bench day and the code on the spool.',
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const beforeItsTime: Check = {
  code: 'date/before-its-time',
  title: 'Bench day before the spool was obtained',
  severity: 'held',
  looksAt: ['content', 'obtainedOn'],
  explains:
    'Nobody pulls a spool before it was obtained: the date is a slip, or another spool was pulled. When a spool was obtained may tell what it is.',
  limit: 'Day on which the spool was obtained ≤ bench day.',
  source: 'common practice',
  example: 'A spool bought on 3 February whose pulls are dated 30 January.',
  run({ content: { benchDay }, obtainedOn }) {
    if (benchDay >= obtainedOn) return [];
    return [
      observe(`The bench day is ${benchDay}, but the spool was obtained on ${obtainedOn}. Check the date and the code on the spool.`, {
        actual: benchDay,
        expected: `on or after ${obtainedOn}`,
        pointer: '/benchDay',
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const dateInTheFuture: Check = {
  code: 'date/in-the-future',
  title: 'Bench day in the future',
  severity: 'blocks',
  looksAt: ['content', 'today'],
  explains: 'Nothing was measured on a day that has not come yet at the bench.',
  limit: 'Bench day ≤ today, in the time zone of the bench.',
  source: 'common practice',
  example: 'Pulls of tomorrow.',
  run({ content, today }) {
    if (content.benchDay <= today) return [];
    return [
      observe(`The bench day is ${content.benchDay}; at the bench it is ${today}. Correct the date.`, {
        actual: content.benchDay,
        expected: `${today} or earlier`,
        pointer: '/benchDay',
      }),
    ];
  },
};

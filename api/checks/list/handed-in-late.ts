import { observe } from '../check.js';
import type { Check } from '../check.js';

const DAY_MS = 86_400_000;

export const handedInLate: Check<'days'> = {
  code: 'date/long-past',
  title: 'Handed in long after the bench day',
  severity: 'note',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['content', 'today'],
  explains: 'What is handed in late is more often a slip in the date, or was kept back until other results were known.',
  limit: 'Days between the bench day and today at the bench.',
  limits: { days: { words: 'Days after the bench day, at most', value: 60, unit: 'd', atLeast: 1, atMost: 3650 } },
  source: 'common practice',
  example: 'Pulls of 17 January handed in on 1 April.',
  run({ content, today }, { days }) {
    const passed = Math.round((Date.parse(today) - Date.parse(content.benchDay)) / DAY_MS);
    if (passed <= days) return [];
    return [
      observe(`The bench day ${content.benchDay} is ${passed} days ago. Check the date.`, {
        actual: `${passed} d`,
        expected: `at most ${days} d`,
        pointer: '/benchDay',
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const beforeTheEdition: Check = {
  code: 'date/before-the-edition',
  title: 'Bench day before the edition',
  severity: 'held',
  looksAt: ['content', 'opensOn'],
  explains: 'Nobody pulls for an edition before it opens: the date is a slip, or the edition is another.',
  limit: 'First day of the edition ≤ bench day.',
  source: 'common practice',
  example: 'Pulls of the edition that opens on 5 January, dated 30 December.',
  run({ content: { benchDay }, opensOn }) {
    if (benchDay >= opensOn) return [];
    return [
      observe(`The bench day is ${benchDay}, but the edition opens on ${opensOn}. Check the date and the edition.`, {
        actual: benchDay,
        expected: `on or after ${opensOn}`,
        pointer: '/benchDay',
      }),
    ];
  },
};

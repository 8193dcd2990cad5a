import { observe } from '../check.js';
import type { Check } from '../check.js';

export const sameReadings: Check = {
  code: 'readings/same-as-earlier',
  title: 'Same readings as an earlier submission',
  severity: 'held',
  looksAt: ['sameReadingsAs'],
  explains: 'All readings equal those of another submission: probably the same file was handed in twice.',
  limit: 'No other submission has the same readings throughout.',
  source: 'common practice',
  example: 'The file of last week, handed in again.',
  run({ sameReadingsAs }) {
    if (sameReadingsAs.length === 0) return [];
    const references = sameReadingsAs.join(', ');
    return [
      observe(`All readings equal those of ${references}.`, {
        actual: references,
        expected: 'readings of its own',
      }),
    ];
  },
};

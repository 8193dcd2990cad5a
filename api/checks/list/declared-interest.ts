import { observe } from '../check.js';
import type { Check } from '../check.js';

export const declaredInterest: Check = {
  code: 'tester/declared-interest',
  title: 'Tester has declared an interest in the maker',
  severity: 'held',
  explains: 'The reviewer decides whether readings by somebody with a tie to the maker count.',
  limit: 'No declared interest in the maker.',
  run({ hasDeclaredInterest }) {
    if (!hasDeclaredInterest) return [];
    return [
      observe('The tester has declared an interest in the maker of this spool.', {
        actual: 'declared',
        expected: 'none',
        forTester: 'A reviewer will look at this submission.',
      }),
    ];
  },
};

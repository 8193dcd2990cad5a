import { observe } from '../check.js';
import type { Check } from '../check.js';

export const declaredInterest: Check = {
  code: 'tester/declared-interest',
  title: 'Tester has declared an interest in the maker',
  severity: 'held',
  mayBe: ['held'],
  looksAt: ['hasDeclaredInterest'],
  explains:
    'The reviewer decides whether readings by somebody with a tie to the maker count. The tester does not see this finding: it would name the maker of a coded spool.',
  limit: 'No declared interest in the maker.',
  source: 'ISO/IEC 17025, 4.1',
  example: 'A tester whose sister works for the maker.',
  run({ hasDeclaredInterest }) {
    if (!hasDeclaredInterest) return [];
    return [
      observe('The tester has declared an interest in the maker of this spool.', {
        actual: 'declared',
        expected: 'none',
      }),
    ];
  },
};

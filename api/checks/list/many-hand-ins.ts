import { observe } from '../check.js';
import type { Check } from '../check.js';
import { MOST_TOLD } from '../finding.js';

export const manyHandIns: Check = {
  code: 'tester/many-hand-ins',
  title: 'The same spool handed in again and again',
  severity: 'note',
  mayBe: ['held', 'note'],
  looksAt: ['handIns'],
  explains: `A tester who hands in one spool by one method many times, or takes it back and hands it in again, could find out from the findings what the label says. From the ${MOST_TOLD + 1}th time on the tester is told no sealed finding of it, nor of this one; the reviewer reads all.`,
  limit: `Hand-ins of one tester, spool and method, those that were taken back included: at most ${MOST_TOLD}.`,
  source: 'common practice of blind testing',
  example: 'Five hand-ins of one spool within an hour, four of them taken back.',
  run({ handIns }) {
    if (handIns <= MOST_TOLD) return [];
    return [
      observe(`This is hand-in ${handIns} of this spool by this tester and method, those taken back included.`, {
        actual: String(handIns),
        expected: `at most ${MOST_TOLD}`,
        forTester: null,
      }),
    ];
  },
};

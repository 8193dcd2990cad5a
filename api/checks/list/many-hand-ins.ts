import { observe } from '../check.js';
import type { Check } from '../check.js';

/** Hand-ins of one spool by one method that are ordinary: the first, and two that were taken back. */
const MOST_HAND_INS = 3;

export const manyHandIns: Check = {
  code: 'tester/many-hand-ins',
  title: 'The same spool handed in again and again',
  severity: 'note',
  mayBe: ['held', 'note'],
  looksAt: ['handIns'],
  explains:
    'A tester who hands in one spool by one method many times, or takes it back and hands it in again, may be looking for what the label says. The tester is told nothing of this; the reviewer reads it.',
  limit: `Hand-ins of one tester, spool and method, those that were taken back included: at most ${MOST_HAND_INS}.`,
  source: 'common practice of blind testing',
  example: 'Five hand-ins of one spool within an hour, four of them taken back.',
  run({ handIns }) {
    if (handIns <= MOST_HAND_INS) return [];
    return [
      observe(`This is hand-in ${handIns} of this spool by this tester and method, those taken back included.`, {
        actual: String(handIns),
        expected: `at most ${MOST_HAND_INS}`,
        forTester: null,
      }),
    ];
  },
};

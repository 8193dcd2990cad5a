import { observe } from '../check.js';
import type { Check } from '../check.js';

export const sameHandsAgain: Check = {
  code: 'retest/same-hands',
  title: 'Tested again by the same hands',
  severity: 'held',
  mayBe: ['held'],
  looksAt: ['secondTime'],
  explains:
    'A result that is drawn to be tested again is meant for another person, on another rig, by the same method. Its tester is not told, for that would tell which spools these are; the reviewer refuses it, and the spool stays on the shelf for somebody else.',
  limit: 'Another tester, another rig, the same method as the first time.',
  source: 'ISO 5725-2, on reproducibility: other operators and other equipment',
  example: 'The spool comes back to the rig that pulled it first.',
  run({ secondTime }) {
    if (secondTime.length === 0) return [];
    return [
      observe(`This spool is tested again, and ${secondTime.join(', and ')}. Refuse it, so that somebody else tests it on another rig.`, {
        actual: secondTime.join(', '),
        expected: 'another tester, another rig, the same method',
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';
import { fewerThan } from '../fewer-than.js';

export const fewerExplained: Check = {
  code: 'specimens/fewer-explained',
  title: 'Too few valid specimens, with the reason',
  severity: 'held',
  mayBe: ['held'],
  looksAt: ['content', 'method', 'specimens'],
  explains:
    'A bench day that went badly belongs on record: what was tested, and why so little of it counts. The reviewer decides whether the few that count may stand.',
  limit: 'The method version states the least number.',
  source: 'common practice',
  example: 'Three valid pulls where the method needs five, because the grip slipped from the fourth on.',
  run({ content, specimens, method }) {
    const { fewerBecause } = content;
    if (fewerBecause === undefined) return [];
    const least = method.limits.minimumSpecimens;
    return fewerThan(least, specimens).map(({ condition, valid }) =>
      observe(`${valid} valid ${condition} specimens; the method needs ${least}. The tester says: ${fewerBecause}`, {
        actual: String(valid),
        expected: `at least ${least}`,
        pointer: '/fewerBecause',
      }),
    );
  },
};

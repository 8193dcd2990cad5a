import { observe } from '../check.js';
import type { Check } from '../check.js';
import { fewerThan } from '../fewer-than.js';

export const tooFewValidSpecimens: Check = {
  code: 'specimens/too-few-valid',
  title: 'Too few valid specimens',
  severity: 'blocks',
  mayBe: ['blocks', 'held'],
  looksAt: ['content', 'method', 'specimens'],
  explains:
    'A figure rests on the least number of valid specimens that the method version states, in each condition that was tested. Where the tester says in words why fewer count, it is another check that holds it.',
  limit: 'The method version states the least number.',
  source: 'common practice',
  example: 'Four valid pulls, where the method needs five.',
  run({ content, specimens, method }) {
    if (content.fewerBecause !== undefined) return [];
    const least = method.limits.minimumSpecimens;
    return fewerThan(least, specimens).map(({ condition, valid }) =>
      observe(
        `${valid} valid ${condition} specimens; the method needs ${least}. Test more, or say why fewer count (in a file: the column "fewer because").`,
        {
          actual: String(valid),
          expected: `at least ${least}`,
        },
      ),
    );
  },
};

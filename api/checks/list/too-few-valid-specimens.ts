import { observe } from '../check.js';
import type { Check } from '../check.js';

export const tooFewValidSpecimens: Check = {
  code: 'specimens/too-few-valid',
  title: 'Too few valid specimens',
  severity: 'blocks',
  mayBe: ['blocks', 'held'],
  looksAt: ['method', 'specimens'],
  explains: 'A figure rests on the least number of valid specimens that the method version states, in each condition that was tested.',
  limit: 'The method version states the least number.',
  source: 'common practice',
  example: 'Four valid pulls, where the method needs five.',
  run({ specimens, method }) {
    const least = method.limits.minimumSpecimens;
    const conditions = new Set(specimens.map(({ condition }) => condition));
    return [...conditions].flatMap((condition) => {
      const valid = specimens.filter((specimen) => specimen.state === 'valid' && specimen.condition === condition).length;
      if (valid >= least) return [];
      return [
        observe(`${valid} valid ${condition} specimens; the method needs ${least}. Test more, or say why fewer count.`, {
          actual: String(valid),
          expected: `at least ${least}`,
        }),
      ];
    });
  },
};

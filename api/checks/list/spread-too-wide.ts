import { observe } from '../check.js';
import type { Check } from '../check.js';

export const spreadTooWide: Check = {
  code: 'specimens/spread-too-wide',
  title: 'Spread above the limit of the method',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['figures', 'method'],
  explains: 'A coefficient of variation above the limit points to the grip, the rig or a damaged spool.',
  limit: 'The method version states the largest coefficient of variation.',
  source: 'common practice',
  example: 'Pulls from 90 N to 160 N from one spool.',
  run({ figures, method }) {
    const limit = method.limits.maximumCvPercent;
    const spreads = [
      ['straight pull', figures.breakingForceN],
      ['treated', figures.treatedForceN],
      ['diameter', figures.diameterMm],
      ['linear density', figures.linearDensityTex],
    ] as const;
    return spreads.flatMap(([name, spread]) => {
      const cv = spread?.cvPercent ?? 0;
      if (cv <= limit) return [];
      return [
        observe(`Coefficient of variation, ${name}: ${cv.toFixed(1)} %; the method allows ${limit} %.`, {
          actual: `${cv.toFixed(1)} %`,
          expected: `at most ${limit} %`,
        }),
      ];
    });
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const retentionAboveWhole: Check<'wholePercent'> = {
  code: 'figures/retention-above-whole',
  title: 'Retention wholly above the whole',
  severity: 'held',
  isSealed: true,
  looksAt: ['figures'],
  explains: 'A knot or abrasion that makes a line stronger beyond doubt is more likely an exchange of straight and treated specimens.',
  limit: 'The 95 % interval of the retention reaches down to the whole.',
  limits: { wholePercent: { words: 'Retention that the interval must reach down to', value: 100, unit: '%', atLeast: 100, atMost: 150 } },
  source: "common practice; interval by Fieller's theorem",
  example: 'Straight pulls near 90 N, pulls over the knot near 207 N.',
  run({ figures }, { wholePercent }) {
    const retention = figures.retentionPercent;
    if (!retention || retention.low95 === null || retention.low95 <= wholePercent) return [];
    return [
      observe(`Retention ${retention.value.toFixed(1)} % with its whole interval above ${wholePercent} %.`, {
        actual: `${retention.low95.toFixed(1)} % and more`,
        expected: `an interval that holds ${wholePercent} % or less`,
        forTester: 'Check which specimens are marked as treated.',
      }),
    ];
  },
};

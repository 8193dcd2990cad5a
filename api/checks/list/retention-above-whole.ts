import { observe } from '../check.js';
import type { Check } from '../check.js';

export const retentionAboveWhole: Check = {
  code: 'figures/retention-above-whole',
  title: 'Retention wholly above 100 %',
  severity: 'held',
  isSealed: true,
  explains: 'A knot or abrasion that makes a line stronger beyond doubt is more likely an exchange of straight and treated specimens.',
  limit: 'The whole 95 % interval of the retention lies above 100 %.',
  run({ figures }) {
    const retention = figures.retentionPercent;
    if (!retention || retention.low95 === null || retention.low95 <= 100) return [];
    return [
      observe(`Retention ${retention.value.toFixed(1)} % with its whole interval above 100 %.`, {
        actual: `${retention.low95.toFixed(1)} % and more`,
        expected: 'an interval that holds 100 % or less',
        forTester: 'Check which specimens are marked as treated.',
      }),
    ];
  },
};

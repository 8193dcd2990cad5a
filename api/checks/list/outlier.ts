import { grubbsTest } from '../../measurement/outliers/grubbs.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

export const outlier: Check = {
  code: 'readings/outlier',
  title: 'Outlying reading',
  severity: 'held',
  explains:
    "Grubbs' test, two-sided at 5 %, on the breaking forces of each condition. An outlier is looked at by the reviewer and never removed by itself.",
  limit: "Critical value of Grubbs' test at 5 %, by the number of specimens (ISO 5725-2).",
  run({ specimens }) {
    return (['untreated', 'treated'] as const).flatMap((condition) => {
      const pulls = specimens
        .filter((specimen) => specimen.state === 'valid' && specimen.condition === condition)
        .flatMap(({ number, readings }) =>
          readings.filter(({ role }) => role === 'breakingForce').map(({ valueSi }) => ({ number, forceN: Number(valueSi) })),
        );
      if (pulls.length < 3) return [];
      const test = grubbsTest(pulls.map(({ forceN }) => forceN));
      const suspect = test.isOutlier && test.suspectIndex !== null ? pulls[test.suspectIndex] : undefined;
      if (!suspect) return [];
      return [
        observe(
          `Specimen ${suspect.number} lies ${test.statistic.toFixed(2)} standard deviations from the mean; the critical value is ${test.critical.toFixed(2)}.`,
          {
            actual: test.statistic.toFixed(3),
            expected: `at most ${test.critical.toFixed(3)}`,
            specimens: [suspect.number],
            forTester: `Look at specimen ${suspect.number} again.`,
          },
        ),
      ];
    });
  },
};

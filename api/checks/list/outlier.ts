import { grubbsTest } from '../../measurement/outliers/grubbs.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { countedPulls } from '../counted-pulls.js';

export const outlier: Check<'levelPercent'> = {
  code: 'readings/outlier',
  title: 'Outlying reading',
  severity: 'held',
  looksAt: ['specimens'],
  explains:
    "Grubbs' test, two-sided, on the breaking forces of each condition. An outlier is looked at by the reviewer and never removed by itself.",
  limit: "Critical value of Grubbs' test at the level, by the number of specimens.",
  limits: { levelPercent: { words: 'Level of the test', value: 5, unit: '%', atLeast: 0.1, atMost: 10 } },
  source: 'ISO 5725-2; NIST/SEMATECH e-Handbook 1.3.5.17.1',
  example: 'Seven pulls between 160 N and 166 N, and one at 147 N.',
  run({ specimens }, { levelPercent }) {
    return countedPulls(specimens).flatMap((pulls) => {
      if (pulls.length < 3) return [];
      const test = grubbsTest(
        pulls.map(({ forceN }) => forceN),
        levelPercent / 100,
      );
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

import { observe } from '../check.js';
import type { Check } from '../check.js';

const LEAST_RUN = 4;

export const identicalReadings: Check = {
  code: 'readings/identical-run',
  title: 'Identical readings in a row',
  severity: 'held',
  explains: 'Breaking forces scatter; four of them in a row with the very same text are rarely four pulls.',
  limit: 'Four or more consecutive specimens of one condition with the same breaking force (common practice).',
  run({ specimens }) {
    return (['untreated', 'treated'] as const).flatMap((condition) => {
      const pulls = specimens
        .filter((specimen) => specimen.condition === condition)
        .flatMap(({ number, readings }) =>
          readings.filter(({ role }) => role === 'breakingForce').map(({ valueSi }) => ({ number, valueSi })),
        );
      const runs = pulls.reduce<(typeof pulls)[]>((groups, pull) => {
        const last = groups.at(-1);
        if (last?.[0]?.valueSi === pull.valueSi) last.push(pull);
        else groups.push([pull]);
        return groups;
      }, []);
      return runs
        .filter((run) => run.length >= LEAST_RUN)
        .map((run) => {
          const numbers = run.map(({ number }) => number);
          return observe(`Specimens ${numbers.join(', ')} have the very same breaking force.`, {
            actual: `${run.length} in a row`,
            expected: `fewer than ${LEAST_RUN}`,
            specimens: numbers,
          });
        });
    });
  },
};

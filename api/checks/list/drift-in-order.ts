import { tCdf } from '../../measurement/distributions/t-distribution.js';
import { mean } from '../../measurement/summary/mean.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { countedPulls } from '../counted-pulls.js';

export const driftInOrder: Check<'levelPercent' | 'leastSpecimens'> = {
  code: 'readings/drift-in-order',
  title: 'Forces drift in the order of the pulls',
  severity: 'note',
  looksAt: ['specimens'],
  explains:
    'Specimens of one spool differ by chance, not by their turn. A slope tells of grips that wear, a zero that wanders or a gauge that warms up.',
  limit: 'Two-sided t test of the slope of a straight line through the breaking forces by number, in each condition.',
  limits: {
    levelPercent: { words: 'Level of the test', value: 1, unit: '%', atLeast: 0.1, atMost: 5 },
    leastSpecimens: { words: 'Specimens from which on it is tested', value: 8, unit: '', atLeast: 4, atMost: 1000 },
  },
  source: 'Least-squares line, NIST/SEMATECH e-Handbook 4.1.4.1; level: common practice',
  example: 'Eight pulls that fall by 1 N each.',
  run({ specimens }, { levelPercent, leastSpecimens }) {
    return countedPulls(specimens).flatMap((pulls) => {
      if (pulls.length < leastSpecimens) return [];
      const chance = chanceOfSlope(pulls.map(({ forceN }) => forceN));
      if (chance >= levelPercent / 100) return [];
      return [
        observe(
          `The breaking forces drift in the order of the pulls; chance makes such a slope in ${(100 * chance).toFixed(2)} % of sets.`,
          {
            actual: `${(100 * chance).toFixed(2)} %`,
            expected: `${levelPercent} % or more`,
            specimens: pulls.map(({ number }) => number),
            forTester: 'Look at the readings in the order of the pulls: grips, zero of the display, warming up.',
          },
        ),
      ];
    });
  },
};

/** Chance of a slope as steep in either direction among readings that do not drift [1]; n ≥ 4. */
function chanceOfSlope(values: readonly number[]): number {
  const n = values.length;
  const [middle, average] = [(n - 1) / 2, mean(values)];
  const sum = (of: (value: number, turn: number) => number): number =>
    values.reduce((total, value, i) => total + of(value - average, i - middle), 0);
  const [xx, xy, yy] = [sum((_, x) => x * x), sum((y, x) => x * y), sum((y) => y * y)];
  const residual = yy - (xy * xy) / xx;
  if (yy === 0) return 1;
  if (residual <= 1e-12 * yy) return 0;
  const t = xy / xx / Math.sqrt(residual / (n - 2) / xx);
  return 2 * tCdf(-Math.abs(t), n - 2);
}

import { chiSquareCdf } from '../../measurement/distributions/chi-square-distribution.js';
import { mean } from '../../measurement/summary/mean.js';
import { median } from '../../measurement/summary/median.js';
import { displayedReadings } from '../displayed-readings.js';
import type { DisplayedReadings } from '../displayed-readings.js';
import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';

type LimitName = 'leastPairs' | 'levelPercent';

/** Pulls of a line scatter at least this much [1]; common practice. It keeps copies from hiding behind the small spread that they make. */
const LEAST_RELATIVE_SPREAD = 0.01;

export const identicalReadings: Check<LimitName> = {
  code: 'readings/identical-beyond-chance',
  title: 'Identical readings beyond chance',
  severity: 'held',
  looksAt: ['instruments', 'specimens'],
  explains:
    'Breaking forces scatter. From their spread and the step of the display follows how many pairs of equal readings chance makes; many more are rarely as many pulls.',
  limit: 'Pairs of equal breaking forces in one condition, and the chance of so many.',
  limits: {
    leastPairs: { words: 'Pairs from which on it is looked at', value: 3, unit: '', atLeast: 1, atMost: 1000 },
    levelPercent: { words: 'Chance of so many pairs, more than', value: 0.1, unit: '%', atLeast: 0.001, atMost: 5 },
  },
  source: 'Birthday problem for normal readings, worked out here; level: common practice',
  example: 'Five readings, and the same five again below them.',
  run(input, limits) {
    return displayedReadings(input, 'breakingForce').flatMap((readings) => equalsOf(readings, limits));
  },
};

function equalsOf(
  { unit, decimals, step, readings }: DisplayedReadings,
  { leastPairs, levelPercent }: Readonly<Record<LimitName, number>>,
): Observation[] {
  const alike = [...Map.groupBy(readings, ({ text }) => text).values()].filter((group) => group.length > 1);
  const pairs = alike.reduce((sum, { length }) => sum + (length * (length - 1)) / 2, 0);
  if (pairs < leastPairs) return [];
  const { expectedPairs, chance } = chanceOfPairs(
    pairs,
    readings.map(({ text }) => Number(text)),
    step / 10 ** decimals,
  );
  if (chance > levelPercent / 100) return [];
  const numbers = alike.flat().map(({ number }) => number);
  const texts = alike.map((group) => `${group[0]?.text ?? ''} ${unit} (specimens ${group.map(({ number }) => number).join(', ')})`);
  return [
    observe(`Equal breaking forces: ${texts.join('; ')}. Chance makes about ${expectedPairs.toFixed(1)} equal pairs; here are ${pairs}.`, {
      actual: `${pairs} equal pairs`,
      expected: `about ${expectedPairs.toFixed(1)}`,
      specimens: numbers,
    }),
  ];
}

/**
 * Chance of so many equal pairs among normal readings on a display of that step: a Poisson tail, widened by the variance of
 * the number of pairs (pairs that share a reading come together).
 */
function chanceOfPairs(pairs: number, values: readonly number[], step: number): { expectedPairs: number; chance: number } {
  const n = values.length;
  const middle = median(values);
  const medianDeviation = median(values.map((value) => Math.abs(value - middle)));
  // From the middle of the readings: an outlier would make the others look closer together than they are.
  const stepsPerSd = Math.max(1.4826 * medianDeviation, LEAST_RELATIVE_SPREAD * mean(values)) / step;
  const pairChance = 1 / (2 * Math.sqrt(Math.PI) * stepsPerSd);
  const tripleChance = 1 / (2 * Math.PI * Math.sqrt(3) * stepsPerSd ** 2);
  const expectedPairs = ((n * (n - 1)) / 2) * pairChance;
  const variance = expectedPairs * (1 - pairChance) + n * (n - 1) * (n - 2) * (tripleChance - pairChance ** 2);
  const widening = Math.max(1, variance / expectedPairs);
  return { expectedPairs, chance: chiSquareCdf((2 * expectedPairs) / widening, (2 * pairs) / widening) };
}

import { chiSquareQuantile } from '../../measurement/distributions/chi-square-distribution.js';
import { standardDeviation } from '../../measurement/summary/standard-deviation.js';
import { observe } from '../check.js';
import type { Check, Observation } from '../check.js';
import type { DisplayedReadings } from '../displayed-readings.js';
import { displayedReadings } from '../displayed-readings.js';

type LimitName = 'leastReadings' | 'levelPercent';

/** Spread in units of the tested digit from which on its values come about equally often (normal readings: to 1.5 %). */
const LEAST_SPREAD = 5;
const NAMES = { breakingForce: 'breaking forces', wideDiameter: 'widest diameters', narrowDiameter: 'narrowest diameters' } as const;

export const terminalDigits: Check<LimitName> = {
  code: 'readings/terminal-digits',
  title: 'Last digits are not spread evenly',
  severity: 'note',
  looksAt: ['instruments', 'specimens'],
  explains:
    'The last digit of an honest display takes every value that its step allows about equally often; a preference tells of rounding or of readings by eye.',
  limit: 'χ² test on the last digits of the readings of one kind and unit, where they scatter by 5 of its steps or more.',
  limits: {
    leastReadings: { words: 'Readings from which on it is tested', value: 50, unit: '', atLeast: 20, atMost: 20_000 },
    levelPercent: { words: 'Level of the test', value: 1, unit: '%', atLeast: 0.1, atMost: 5 },
  },
  source: 'Pearson 1900; level: common practice',
  example: 'Sixty breaking forces that all end in 0 or 5.',
  run(input, limits) {
    return (['breakingForce', 'wideDiameter', 'narrowDiameter'] as const).flatMap((role) =>
      [...Map.groupBy(displayedReadings(input, role), ({ unit }) => unit).values()].flatMap((groups) =>
        preferenceIn(groups, NAMES[role], limits),
      ),
    );
  },
};

function preferenceIn(
  groups: readonly DisplayedReadings[],
  name: string,
  { leastReadings, levelPercent }: Readonly<Record<LimitName, number>>,
): Observation[] {
  const { decimals = 0, step = 1 } = groups[0] ?? {};
  const zeros = String(step).length - 1;
  const toPlace = 10 ** (decimals - zeros);
  const spreads = groups.map(({ readings }) =>
    readings.length < 2 ? 0 : standardDeviation(readings.map(({ text }) => Number(text))) * toPlace,
  );
  const texts = groups.flatMap(({ readings }) => readings.map(({ text }) => text));
  if (texts.length < leastReadings || Math.min(...spreads) < LEAST_SPREAD) return [];
  const counts = new Map(possibleDigits(step / 10 ** zeros).map((digit) => [digit, 0]));
  for (const text of texts) {
    const digit = Number(text.replace('.', '').at(-1 - zeros));
    counts.set(digit, (counts.get(digit) ?? 0) + 1);
  }
  const expected = texts.length / counts.size;
  const statistic = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const critical = chiSquareQuantile(1 - levelPercent / 100, counts.size - 1);
  if (statistic <= critical) return [];
  return [
    observe(`The last digits of ${texts.length} ${name} are uneven: χ² ${statistic.toFixed(1)}, critical ${critical.toFixed(1)}.`, {
      actual: statistic.toFixed(1),
      expected: `at most ${critical.toFixed(1)}`,
    }),
  ];
}

const possibleDigits = (step: number): number[] => Array.from({ length: 10 / step }, (_, i) => i * step);

import { chiSquareQuantile } from '../../measurement/distributions/chi-square-distribution.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

const LEAST_READINGS = 50;
const LEVEL = 0.99;

export const terminalDigits: Check = {
  code: 'readings/terminal-digits',
  title: 'Last digits are not spread evenly',
  severity: 'note',
  explains:
    'The last digit of an honest display takes every value about equally often; a preference tells of rounding or of readings by eye.',
  limit: 'χ² test on the last digits of 50 or more breaking forces, at 1 %.',
  run({ content }) {
    const texts = content.specimens.flatMap(({ readings }) =>
      readings.filter(({ role }) => role === 'breakingForce').map(({ value }) => value),
    );
    if (texts.length < LEAST_READINGS) return [];
    const counts = Array.from({ length: 10 }, (_, digit) => texts.filter((text) => text.endsWith(String(digit))).length);
    const expected = texts.length / 10;
    const statistic = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    const critical = chiSquareQuantile(LEVEL, 9);
    if (statistic <= critical) return [];
    return [
      observe(`The last digits of ${texts.length} readings are uneven: χ² ${statistic.toFixed(1)}, critical ${critical.toFixed(1)}.`, {
        actual: statistic.toFixed(1),
        expected: `at most ${critical.toFixed(1)}`,
      }),
    ];
  },
};

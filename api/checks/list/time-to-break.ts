import { observe } from '../check.js';
import type { Check } from '../check.js';
import { namedSpecimens } from '../specimen-words.js';

export const timeToBreak: Check = {
  code: 'specimens/time-to-break',
  title: 'Time to break outside the window of the method',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['method', 'specimens'],
  explains: 'Strength depends on the rate of loading; specimens that broke too fast or too slowly do not compare.',
  limit: 'The method version states the window.',
  source: 'common practice; ASTM D2256 asks for 20 s ± 3 s (from memory)',
  example: 'A specimen that parted after 4 s, where the method asks for 10 s to 30 s.',
  run({ specimens, method }) {
    const window = method.limits.timeToBreakS;
    if (window === null) return [];
    const outside = specimens.filter(
      ({ state, readings }) =>
        state === 'valid' &&
        readings.some(({ role, valueSi }) => role === 'timeToBreak' && (Number(valueSi) < window.low || Number(valueSi) > window.high)),
    );
    if (outside.length === 0) return [];
    const numbers = outside.map(({ number }) => number);
    return [
      observe(`Broke outside ${window.low} to ${window.high} s: ${namedSpecimens(numbers)}.`, {
        actual: `${numbers.length} specimens`,
        expected: `${window.low} to ${window.high} s`,
        specimens: numbers,
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';
import { namedSpecimens } from '../specimen-words.js';

export const timeNotRead: Check = {
  code: 'specimens/time-not-read',
  title: 'Time to break not read',
  severity: 'note',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['method', 'specimens'],
  explains: 'Where the method states a window for the time to break, a specimen without a time cannot be held against it.',
  limit: 'A time to break on each valid specimen, where the method version states a window.',
  source: 'common practice',
  example: 'Eight breaking forces without a time, under a method that asks for 10 s to 30 s.',
  run({ specimens, method }) {
    if (method.limits.timeToBreakS === null) return [];
    const has = (readings: readonly { readonly role: string }[], wanted: string) => readings.some(({ role }) => role === wanted);
    const untimed = specimens.filter(
      ({ state, readings }) => state === 'valid' && has(readings, 'breakingForce') && !has(readings, 'timeToBreak'),
    );
    if (untimed.length === 0) return [];
    const numbers = untimed.map(({ number }) => number).sort((one, other) => one - other);
    return [
      observe(`No time to break of ${namedSpecimens(numbers)}; the method states a window for it.`, {
        actual: `${numbers.length} specimens without`,
        expected: 'a time on each',
        specimens: numbers,
      }),
    ];
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';
import { namedSpecimens } from '../specimen-words.js';

const MOST_NAMED = 1000;

export const numbersMissing: Check = {
  code: 'specimens/numbers-missing',
  title: 'Gap in the numbers of specimens',
  severity: 'note',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['specimens'],
  explains:
    'Every specimen that was tested is handed in, with a reason where it does not count. A gap in the numbers may be one that was left out for what it read.',
  limit: 'Consecutive numbers within each condition.',
  source: 'common practice',
  example: 'Specimens 1 to 8 without number 5.',
  run({ specimens }) {
    const gaps = [...Map.groupBy(specimens, ({ condition }) => condition).values()].flatMap((ofOne) => {
      const numbers = new Set(ofOne.map(({ number }) => number));
      const [first, last] = [Math.min(...numbers), Math.max(...numbers)];
      return Array.from({ length: last - first + 1 }, (_, i) => first + i).filter((number) => !numbers.has(number));
    });
    // A number that the other condition has is there.
    const all = new Set(specimens.map(({ number }) => number));
    const missing = gaps.filter((number) => !all.has(number)).slice(0, MOST_NAMED);
    if (missing.length === 0) return [];
    return [
      observe(`Nothing is handed in of ${namedSpecimens(missing)}. Add each that was tested, with the reason if it does not count.`, {
        actual: `without ${namedSpecimens(missing)}`,
        expected: 'every specimen that was tested',
        pointer: '/specimens',
      }),
    ];
  },
};

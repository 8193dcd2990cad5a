import type { ReadingRole } from '../../contract/submission-content.js';
import { READING_ROLES, READING_WORDS } from '../../contract/submission-content.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { namedSpecimens } from '../specimen-words.js';

export const mixedUnits: Check = {
  code: 'readings/mixed-units',
  title: 'Readings of one kind in two units',
  severity: 'held',
  looksAt: ['specimens'],
  explains:
    'A display is rarely switched within one bench day: two units for the same kind of reading often mean that one was typed wrongly.',
  limit: 'One unit for each kind of reading.',
  source: 'common practice',
  example: 'Seven breaking forces in lbf and one in N.',
  run({ specimens }) {
    return (Object.keys(READING_ROLES) as ReadingRole[]).flatMap((role) => {
      const read = specimens.flatMap(({ number, readings }) =>
        readings.filter((reading) => reading.role === role).map(({ enteredUnit }) => ({ number, unit: enteredUnit })),
      );
      const byUnit = [...Map.groupBy(read, ({ unit }) => unit)].sort(([, one], [, other]) => other.length - one.length);
      const [most, ...others] = byUnit;
      if (!most || others.length === 0) return [];
      const numbers = others.flatMap(([, readings]) => readings.map(({ number }) => number)).sort((one, other) => one - other);
      const words = byUnit.map(([unit, { length }]) => `${length} in ${unit}`).join(', ');
      return [
        observe(`Readings of ${READING_WORDS[role]}: ${words}. Check the unit of ${namedSpecimens(numbers)}.`, {
          actual: words,
          expected: `all in ${most[0]}, or as the display showed them`,
          specimens: [...new Set(numbers)],
        }),
      ];
    });
  },
};

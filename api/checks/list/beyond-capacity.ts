import { READING_ROLES } from '../../submissions/submission-content.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

export const beyondCapacity: Check = {
  code: 'readings/beyond-capacity',
  title: 'Reading beyond the capacity of the instrument',
  severity: 'blocks',
  explains: 'No instrument reads above its capacity: the unit, the reading or the instrument is wrong.',
  limit: 'The largest capacity among the instruments used for that dimension.',
  run({ specimens, instruments }) {
    return specimens.flatMap(({ number, readings }) =>
      readings.flatMap(({ role, valueSi, enteredText, enteredUnit }) => {
        const capacities = instruments
          .filter(({ dimension, kind }) => dimension === READING_ROLES[role] && kind !== 'abrader')
          .map(({ capacitySi }) => Number(capacitySi));
        const capacity = Math.max(...capacities);
        if (capacities.length === 0 || Number(valueSi) <= capacity) return [];
        return [
          observe(
            `Specimen ${number}: ${enteredText} ${enteredUnit} is beyond the capacity of every instrument named. Check number, unit and instrument.`,
            {
              actual: `${enteredText} ${enteredUnit}`,
              expected: `at most ${capacity} in SI`,
              specimens: [number],
            },
          ),
        ];
      }),
    );
  },
};

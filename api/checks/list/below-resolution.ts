import { READING_ROLES } from '../../submissions/submission-content.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

export const belowResolution: Check = {
  code: 'readings/below-resolution',
  title: 'Reading below the resolution of the instrument',
  severity: 'held',
  explains: 'A reading smaller than the smallest step that the instrument shows was not read on it.',
  limit: 'The finest resolution among the instruments used for that dimension.',
  run({ specimens, instruments }) {
    return specimens.flatMap(({ number, readings }) =>
      readings.flatMap(({ role, valueSi, enteredText, enteredUnit }) => {
        const steps = instruments
          .filter(({ dimension, kind }) => dimension === READING_ROLES[role] && kind !== 'abrader')
          .map(({ resolutionSi }) => Number(resolutionSi));
        const finest = Math.min(...steps);
        if (steps.length === 0 || Number(valueSi) >= finest) return [];
        return [
          observe(
            `Specimen ${number}: ${enteredText} ${enteredUnit} is below the resolution of every instrument named. Check number, unit and instrument.`,
            {
              actual: `${enteredText} ${enteredUnit}`,
              expected: `at least ${finest} in SI`,
              specimens: [number],
            },
          ),
        ];
      }),
    );
  },
};

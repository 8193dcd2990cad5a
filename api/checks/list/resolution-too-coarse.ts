import type { ReadingRole } from '../../contract/submission-content.js';
import { READING_ROLES, READING_WORDS } from '../../contract/submission-content.js';
import { mean } from '../../measurement/summary/mean.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { instrumentsFor } from '../instruments-for.js';

export const resolutionTooCoarse: Check<'sharePercent'> = {
  code: 'instruments/too-coarse',
  title: 'Instrument too coarse for what it reads',
  severity: 'note',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['instruments', 'specimens'],
  explains:
    'A step of the display that is large beside the reading rounds away what the bench wants to know; a finer instrument tells more.',
  limit: 'Finest step among the instruments used, in per cent of the mean reading.',
  limits: { sharePercent: { words: 'Step over mean reading, at most', value: 1, unit: '%', atLeast: 0.05, atMost: 20 } },
  source: 'Resolution of a force-measuring system of class 2 (ISO 7500-1, from memory)',
  example: 'A micrometer with steps of 0.01 mm on a line of 0.2 mm.',
  run({ specimens, instruments }, { sharePercent }) {
    return (Object.keys(READING_ROLES) as ReadingRole[]).flatMap((role) => {
      const steps = instrumentsFor(role, instruments).map(({ resolutionSi }) => Number(resolutionSi));
      const values = specimens.flatMap(({ readings }) =>
        readings.filter((reading) => reading.role === role).map(({ valueSi }) => Number(valueSi)),
      );
      if (steps.length === 0 || values.length === 0) return [];
      const percent = (100 * Math.min(...steps)) / mean(values);
      if (percent <= sharePercent) return [];
      return [
        observe(
          `The step of the display is ${percent.toFixed(1)} % of the mean ${READING_WORDS[role]}. Use an instrument with a finer step.`,
          {
            actual: `${percent.toFixed(2)} %`,
            expected: `at most ${sharePercent} %`,
            pointer: '/instruments',
            forTester: `The step of the display is large beside the readings of ${READING_WORDS[role]}. Use an instrument with a finer step.`,
          },
        ),
      ];
    });
  },
};

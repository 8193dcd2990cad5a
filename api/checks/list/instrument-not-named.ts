import { READING_WORDS } from '../../contract/submission-content.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { instrumentsFor, needsInstrument } from '../instruments-for.js';

export const instrumentNotNamed: Check = {
  code: 'instruments/none-for-reading',
  title: 'No instrument named that can have read it',
  severity: 'blocks',
  looksAt: ['instruments', 'specimens'],
  explains: 'Every reading but a time comes from an instrument with a certificate; the submission names it.',
  limit:
    'A force gauge or load frame for forces, a micrometer or optical gauge for diameters, a balance for masses, a length measure for lengths.',
  source: 'common practice',
  example: 'Breaking forces, and only a micrometer named.',
  run({ specimens, instruments }) {
    const roles = new Set(specimens.flatMap(({ readings }) => readings.map(({ role }) => role)));
    return [...roles]
      .filter((role) => needsInstrument(role) && instrumentsFor(role, instruments).length === 0)
      .map((role) =>
        observe(`No instrument that is named reads a ${READING_WORDS[role]}. Add the instrument that was used.`, {
          actual: instruments.map(({ code, kind }) => `${code} (${kind})`).join(', '),
          expected: `an instrument for a ${READING_WORDS[role]}`,
          pointer: '/instruments',
        }),
      );
  },
};

import { READING_WORDS } from '../../contract/submission-content.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';
import { instrumentsFor } from '../instruments-for.js';

export const severalInstruments: Check = {
  code: 'instruments/several-for-reading',
  title: 'Several instruments that can have read it',
  severity: 'held',
  mayBe: ['blocks', 'held', 'note'],
  looksAt: ['instruments', 'specimens'],
  explains:
    'A reading belongs to one instrument, its certificate and its control pulls. Where two are named nobody can tell which it was: a submission for each keeps them apart.',
  limit: 'One instrument for each kind of reading.',
  source: 'common practice',
  example: 'Straight pulls with two load frames named.',
  run({ specimens, instruments }) {
    const roles = new Set(specimens.flatMap(({ readings }) => readings.map(({ role }) => role)));
    return [...roles].flatMap((role) => {
      const codes = instrumentsFor(role, instruments).map(({ code }) => code);
      if (codes.length < 2) return [];
      return [
        observe(
          `${codes.join(' and ')} can each have read the ${READING_WORDS[role]}. Hand in a submission for each, or name the one that was used.`,
          {
            actual: codes.join(', '),
            expected: 'one instrument',
            pointer: '/instruments',
          },
        ),
      ];
    });
  },
};

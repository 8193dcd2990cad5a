import { observe } from '../check.js';
import type { Check } from '../check.js';

export const calibrationMissing: Check = {
  code: 'calibration/missing',
  title: 'Instrument without a calibration',
  severity: 'blocks',
  mayBe: ['blocks', 'held'],
  looksAt: ['instruments'],
  explains: 'A reading counts only from an instrument with a certificate on record.',
  limit: 'At least one certificate for each instrument used.',
  source: 'ISO/IEC 17025, 6.4',
  example: 'A new load frame whose certificate was never entered.',
  run({ instruments }) {
    return instruments
      .filter(({ calibrations }) => calibrations.length === 0)
      .map(({ code }) =>
        observe(`Instrument ${code} has no certificate on record. Ask an editor to enter it, or use another instrument.`, {
          actual: 'none',
          expected: 'a certificate',
        }),
      );
  },
};

import { observe } from '../check.js';
import type { Check } from '../check.js';

export const calibrationExpired: Check = {
  code: 'calibration/expired-on-bench-day',
  title: 'Calibration not valid on the bench day',
  severity: 'blocks',
  mayBe: ['blocks', 'held'],
  looksAt: ['content', 'instruments'],
  explains: 'The bench day must lie within the dates of a certificate of each instrument used.',
  limit: 'Valid from ≤ bench day ≤ valid until.',
  source: 'ISO/IEC 17025, 6.4',
  example: 'A certificate until 16 January, pulls on 17 January.',
  run({ instruments, content }) {
    const day = content.benchDay;
    return instruments
      .filter(
        ({ calibrations }) =>
          calibrations.length > 0 && !calibrations.some(({ validFrom, validUntil }) => validFrom <= day && day <= validUntil),
      )
      .map(({ code, calibrations }) => {
        const dates = calibrations.map(({ validFrom, validUntil }) => `${validFrom} to ${validUntil}`).join(', ');
        return observe(
          `Instrument ${code} was not under a valid certificate on ${day} (on record: ${dates}). Use another instrument or have it calibrated.`,
          { actual: day, expected: dates },
        );
      });
  },
};

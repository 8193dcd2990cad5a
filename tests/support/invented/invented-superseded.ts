import type { Superseded } from '../../../api/contract/superseded.js';
import type { Season } from './season.js';

/** What was put right in a season of the newer method after results rested on it: a label of the first entry, a certificate of all. */
export function inventedSuperseded({ entries, year, straightPullVersion }: Season): Superseded[] {
  const [first, second] = entries;
  if (straightPullVersion === 1 || !first || !second) return [];
  const references = (count: number) => Array.from({ length: count }, (_, i) => `S-${year}-${String(i + 1).padStart(4, '0')}`);
  return [
    {
      kind: 'claim',
      what: `${first.slug} breakingForce`,
      was: 'basis average, printed 21 lbf',
      reason: 'Read again on the box.',
      on: `${year}-02-01`,
      submissions: references(3),
    },
    {
      kind: 'calibration',
      what: 'C-2025-118 of R1',
      was: `valid until ${year}-12-31, coverage factor 1`,
      reason: 'The factor was read off the wrong line of the certificate.',
      on: `${year}-02-03`,
      submissions: references(Math.min(40, entries.length * 3)),
    },
  ];
}

import type { PublishedClaim } from '../../../api/contract/documents/release-documents.js';
import type { Measured } from './in-units.js';

export const basisWords: Record<PublishedClaim['basis'], string> = {
  average: 'average',
  minimum: 'minimum',
  maximum: 'maximum',
  class: 'class',
  notStated: 'not stated',
};

/** What a claim that is not met is: a strength promises at least, a diameter at most, the others about so much. */
const UNMET: Record<PublishedClaim['quantity'], string> = {
  breakingForce: 'falls short',
  diameter: 'thicker than claimed',
  linearDensity: 'differs from the claim',
  peNumber: 'differs from the claim',
};

export function decisionWords({ decision, quantity }: Pick<PublishedClaim, 'decision' | 'quantity'>): string {
  if (decision === null) return 'not decided';
  const words = {
    meets: 'meets',
    probablyMeets: 'probably meets',
    cannotSay: 'cannot say',
    probablyFallsShort: `probably ${UNMET[quantity]}`,
    fallsShort: UNMET[quantity],
  };
  return words[decision];
}

type Shown = Pick<PublishedClaim, 'shown' | 'value' | 'unit' | 'printed'>;

/** What a label claims, as a figure; in its own unit it reads as printed. */
export const claimed = ({ shown, value, unit, printed }: Shown): Measured => ({
  value: shown ?? value,
  low: null,
  high: null,
  unit,
  printed,
});

/** What was measured of a claim, as a figure. */
export const measured = ({ measured: found, unit }: Pick<PublishedClaim, 'measured' | 'unit'>): Measured => ({
  value: found?.value ?? '',
  low: found?.low ?? null,
  high: found?.high ?? null,
  unit,
});

import { say } from './say.js';
import type { PublishedClaim } from '../../../api/contract/documents/release-documents.js';
import type { Measured } from './in-units.js';

export const basisWords: Record<PublishedClaim['basis'], string> = {
  average: say`average`,
  minimum: say`minimum`,
  maximum: say`maximum`,
  class: say`class`,
  notStated: say`not stated`,
};

/** What a claim that is not met is: a strength promises at least, a diameter at most, the others about so much. */
const UNMET: Record<PublishedClaim['quantity'], string> = {
  breakingForce: say`falls short`,
  diameter: say`thicker than claimed`,
  linearDensity: say`differs from the claim`,
  peNumber: say`differs from the claim`,
};

export function decisionWords({ decision, quantity }: Pick<PublishedClaim, 'decision' | 'quantity'>): string {
  if (decision === null) return say`not decided`;
  const words = {
    meets: say`meets`,
    probablyMeets: say`probably meets`,
    cannotSay: say`cannot say`,
    probablyFallsShort: say`probably ${UNMET[quantity]}`,
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

import type { PublishedClaim } from '../../../api/contract/documents/release-documents.js';

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

import type { PublishedClaim } from '../../../api/public-api/release-documents.schemas.js';

export const basisWords: Record<PublishedClaim['basis'], string> = {
  average: 'average',
  minimum: 'minimum',
  maximum: 'maximum',
  class: 'class',
  notStated: 'not stated',
};

export const decisionWords: Record<NonNullable<PublishedClaim['decision']>, string> = {
  meets: 'meets',
  probablyMeets: 'probably meets',
  cannotSay: 'cannot say',
  probablyFallsShort: 'probably falls short',
  fallsShort: 'falls short',
};

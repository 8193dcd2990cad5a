import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';

type Scheme = EditionDocument['scheme'];

export const combineWords: Record<Scheme['combine'], string> = {
  sumOfPlaces: 'Sum of places',
  weightedSumOfPlaces: 'Weighted sum of places',
  meanStandardScore: 'Mean standard score',
  pairwiseWins: 'Pairwise wins',
};

export const countPlacesWords: Record<Scheme['countPlaces'], string> = {
  beforeExclusions: 'before exclusions',
  afterExclusions: 'after exclusions',
};

export const tieBreakWords: Record<Scheme['tieBreak'], string> = {
  none: 'none: equal scores share a place',
  mostFirsts: 'most first places, then most seconds, and so on',
};

import { say } from './say.js';
import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';

type Scheme = EditionDocument['scheme'];

export const combineWords: Record<Scheme['combine'], string> = {
  sumOfPlaces: say`Sum of places`,
  weightedSumOfPlaces: say`Weighted sum of places`,
  meanStandardScore: say`Mean standard score`,
  pairwiseWins: say`Pairwise wins`,
};

export const countPlacesWords: Record<Scheme['countPlaces'], string> = {
  beforeExclusions: say`before exclusions`,
  afterExclusions: say`after exclusions`,
};

export const tieBreakWords: Record<Scheme['tieBreak'], string> = {
  none: say`none: equal scores share a place`,
  mostFirsts: say`most first places, then most seconds, and so on`,
};

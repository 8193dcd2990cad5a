import { measuredKeyOf } from '../results/results.js';
import { specimensToTell } from '../../measurement/ranking/planning/specimens-to-tell.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { CategoryDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseContext } from './release-context.js';

/** How the readings of a category scatter, and what it takes to tell two variants apart. */
export function spreadOf({ computed: { quantities, spreads } }: ReleaseContext, key: string): CategoryDocument['spread'] {
  const quantity = quantities.find((one) => one.key === key);
  const spread = quantity && spreads.get(measuredKeyOf(quantity));
  if (!spread) throw new Error(`A category ranks what no pinned method yields: ${key}`);
  const { typicalCvPercent, between } = spread;
  return {
    specimenPercent: typicalCvPercent === null ? null : roundHalfEven(typicalCvPercent, 1),
    betweenSubmissionsPercent: roundHalfEven(between.relativePercent, 1),
    degreesOfFreedom: between.degreesOfFreedom,
    specimensToTell: typicalCvPercent === null || typicalCvPercent === 0 ? null : specimensToTell(typicalCvPercent),
  };
}

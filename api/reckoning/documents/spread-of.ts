import type { Quantity } from '../../contract/endpoints/editions.js';
import type { Measured } from '../results/measured.js';
import { specimensToTell } from '../../measurement/ranking/specimens-to-tell.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { CategoryDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseContext } from './release-context.js';

/** Stress and honesty scatter as the force that they are made of. */
const measuredOf = (quantity: Quantity): Measured =>
  quantity === 'apparentStress' || quantity === 'strengthHonesty' ? 'breakingForce' : quantity;

/** How the readings of a category scatter, and what it takes to tell two variants apart. */
export function spreadOf({ computed: { spreads } }: ReleaseContext, quantity: Quantity): CategoryDocument['spread'] {
  const { typicalCvPercent, between } = spreads[measuredOf(quantity)];
  return {
    specimenPercent: typicalCvPercent === null ? null : roundHalfEven(typicalCvPercent, 1),
    betweenSubmissionsPercent: roundHalfEven(between.relativePercent, 1),
    degreesOfFreedom: between.degreesOfFreedom,
    specimensToTell: typicalCvPercent === null || typicalCvPercent === 0 ? null : specimensToTell(typicalCvPercent),
  };
}

import type { CheckInput } from '../../checks/check-input.js';
import type { OwnSubmission } from './evidence.read-model.js';
import type { ReadSubmission } from './examined-submission.js';
import { claimedForceN } from './subject.js';

/** What a submission says that is handed in now, as one of the tester's own. */
export const toOwnSubmission = ({ content, subject: { spool, method }, figures }: ReadSubmission): OwnSubmission => ({
  submissionId: null,
  spoolId: spool.id,
  variantId: spool.variant.id,
  method: method.slug,
  benchDay: content.benchDay,
  isTakenBack: false,
  forceN: figures.breakingForceN?.mean ?? null,
  diameterMm: figures.diameterMm?.mean ?? null,
  claimedN: claimedForceN(spool.variant),
});

/**
 * What the tester's other submissions tell of one. Pure.
 * @param ofSpool the tester's submissions of the same spool, in the order in which they came, itself among them
 * @param ofDay those of the same bench day, itself among them
 */
export function ownEvidence(
  own: OwnSubmission,
  ofSpool: readonly OwnSubmission[],
  ofDay: readonly OwnSubmission[],
): Pick<CheckInput, 'sameDayRatios' | 'ownForcesN' | 'ownDiameterMm' | 'handIns'> {
  const others = ofSpool.filter((one) => one !== own && !one.isTakenBack);
  const ratios = ofDay
    .filter(({ isTakenBack, variantId }) => !isTakenBack && variantId !== own.variantId)
    .flatMap(({ variantId, forceN, claimedN }) => (forceN === null || claimedN === null ? [] : [[variantId, forceN / claimedN] as const]));
  const before = ofSpool.slice(0, ofSpool.indexOf(own));
  return {
    sameDayRatios: [...new Map(ratios).values()],
    ownForcesN: others.flatMap(({ forceN }) => forceN ?? []),
    ownDiameterMm: own.diameterMm ?? others.findLast(({ diameterMm }) => diameterMm !== null)?.diameterMm ?? null,
    handIns: 1 + before.filter(({ method }) => method === own.method).length,
  };
}

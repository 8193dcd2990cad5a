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
 * @param others on record, or handed in with it; not itself
 * @param before those of the others that came before it
 */
export function ownEvidence(
  own: OwnSubmission,
  others: readonly OwnSubmission[],
  before: readonly OwnSubmission[],
): Pick<CheckInput, 'sameDayRatios' | 'ownForcesN' | 'ownDiameterMm' | 'handIns'> {
  const standing = others.filter(({ isTakenBack }) => !isTakenBack);
  const ofSpool = standing.filter(({ spoolId }) => spoolId === own.spoolId);
  const ratios = standing
    .filter(({ benchDay, variantId }) => benchDay === own.benchDay && variantId !== own.variantId)
    .flatMap(({ variantId, forceN, claimedN }) => (forceN === null || claimedN === null ? [] : [[variantId, forceN / claimedN] as const]));
  return {
    sameDayRatios: [...new Map(ratios).values()],
    ownForcesN: ofSpool.flatMap(({ forceN }) => forceN ?? []),
    ownDiameterMm: own.diameterMm ?? ofSpool.findLast(({ diameterMm }) => diameterMm !== null)?.diameterMm ?? null,
    handIns: 1 + before.filter(({ spoolId, method }) => spoolId === own.spoolId && method === own.method).length,
  };
}

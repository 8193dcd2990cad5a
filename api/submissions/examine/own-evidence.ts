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
  const ratios = new Map<string, number>();
  for (const { isTakenBack, variantId, forceN, claimedN } of ofDay)
    if (!isTakenBack && variantId !== own.variantId && forceN !== null && claimedN !== null) ratios.set(variantId, forceN / claimedN);
  const ownForcesN: number[] = [];
  let [ownDiameterMm, handIns, isBefore] = [own.diameterMm, 1, true];
  // A tester's winter on one spool is long: it is walked through once.
  for (const one of ofSpool) {
    if (one === own) {
      isBefore = false;
      continue;
    }
    if (isBefore && one.method === own.method) handIns += 1;
    if (one.isTakenBack) continue;
    if (one.forceN !== null) ownForcesN.push(one.forceN);
    if (own.diameterMm === null) ownDiameterMm = one.diameterMm ?? ownDiameterMm;
  }
  return { sameDayRatios: [...ratios.values()], ownForcesN, ownDiameterMm, handIns };
}

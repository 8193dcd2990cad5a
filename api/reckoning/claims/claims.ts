import { plainQuantity } from '../results/quantity.js';
import type { Result } from '../results/results.js';
import { claimRatioPercent } from '../../measurement/claims/claim-ratio.js';
import { claimLimits, decideClaim } from '../../measurement/claims/decide-claim.js';
import type { ClaimVerdict } from '../../measurement/claims/decide-claim.js';
import { roundHalfEven } from '../../measurement/units/round-half-even.js';
import type { PublishedClaim } from '../../contract/documents/release-documents.js';
import { toFigure, USUAL } from '../documents/figure.js';

import type { EditionContext } from '../documents/release-context.js';

const DECISION: Readonly<Record<ClaimVerdict, NonNullable<PublishedClaim['decision']>>> = {
  meets: 'meets',
  'probably meets': 'probablyMeets',
  'cannot say': 'cannotSay',
  'probably falls short': 'probablyFallsShort',
  'falls short': 'fallsShort',
};

/** Factor from SI to the unit that the quantity is published in, and what the claim promises. */
const CLAIMED = {
  breakingForce: { factor: 1, unit: 'N', sense: 'at-least' },
  diameter: { factor: 1000, unit: 'mm', sense: 'at-most' },
  linearDensity: { factor: 1e6, unit: 'tex', sense: 'within' },
  peNumber: { factor: 1, unit: 'PE', sense: 'within' },
} as const;

/** Tolerance of a claim that states none [%] (common practice). */
const TOLERANCE_PERCENT = { 'at-least': 0, 'at-most': 0, within: 5 } as const;

/** What the label says of a variant, beside what was measured, with a decision after JCGM 106. */
export function publishedClaims(context: EditionContext, variant: string): PublishedClaim[] {
  const results = context.computed.results.get(variant);
  return context.evidence.claims
    .filter((claim) => claim.variant === variant)
    .map(({ quantity, basis, printed, valueSi, seenOn, source }) => {
      const { factor, unit } = CLAIMED[quantity];
      const claimed = Number(valueSi) * factor;
      const result = results?.get(plainQuantity(context.computed.quantities, quantity)?.key ?? '');
      return {
        quantity,
        basis,
        printed,
        value: roundHalfEven(claimed, 4),
        shown: claimedAsShown(claimed, quantity),
        unit,
        seenOn,
        source,
        measured: result ? toFigure(result, USUAL[result.of.quantity]) : null,
        ratioPercent: result ? roundHalfEven(claimRatioPercent(result.estimate.value, claimed), 1) : null,
        decision: result ? decisionOn(result, claimed, quantity) : null,
      };
    });
}

/** A claim to the decimals that its measurement is shown with; a size as it is printed, `1.2` and not `1.2000`. */
const claimedAsShown = (claimed: number, quantity: keyof typeof CLAIMED): string =>
  quantity === 'peNumber' ? String(Number(roundHalfEven(claimed, 2))) : roundHalfEven(claimed, USUAL[quantity].places);

function decisionOn({ estimate }: Result, claimed: number, quantity: keyof typeof CLAIMED): PublishedClaim['decision'] {
  if (estimate.standardUncertainty === null) return null;
  const { sense } = CLAIMED[quantity];
  const limits = claimLimits(claimed, TOLERANCE_PERCENT[sense], sense);
  return DECISION[decideClaim(estimate.value, estimate.standardUncertainty, 1, limits, estimate.degreesOfFreedom).verdict];
}

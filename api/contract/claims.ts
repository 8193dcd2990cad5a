/** What a label or a maker's page says of a variant. */
export const CLAIMED_QUANTITIES = ['breakingForce', 'diameter', 'linearDensity', 'peNumber'] as const;
export type ClaimedQuantity = (typeof CLAIMED_QUANTITIES)[number];
export const CLAIM_BASES = ['average', 'minimum', 'maximum', 'class', 'notStated'] as const;
export type ClaimBasis = (typeof CLAIM_BASES)[number];

/** Number and unit as printed. */
export interface Printed {
  readonly text: string;
  readonly unit: string;
}

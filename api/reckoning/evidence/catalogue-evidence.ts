import type { ClaimBasis, ClaimedQuantity, Printed } from '../../contract/claims.js';
import type { SpoolSource } from '../../contract/spool-sources.js';

/** A claim with its printed words beside the exact SI value (N, m, kg/m; the number itself for a PE number). */
export interface ClaimEvidence {
  /** Slug of the variant. */
  readonly variant: string;
  readonly quantity: ClaimedQuantity;
  readonly basis: ClaimBasis;
  readonly printed: Printed;
  readonly valueSi: string;
  readonly seenOn: string;
  readonly source: string;
}

/** A spool as a release tells of it. */
export interface SpoolEvidence {
  readonly code: string;
  /** Slug of the variant that it is, as is known now. */
  readonly variant: string;
  readonly source: SpoolSource;
  readonly obtainedOn: string;
  readonly place: string;
  readonly lot: string | null;
  readonly lengthM: string | null;
  /** Oldest first. */
  readonly reidentifications: readonly { readonly reason: string; readonly at: string }[];
}

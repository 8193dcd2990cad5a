/** How a spool came to the house. */
export const SPOOL_SOURCES = ['bought', 'makerSupplied', 'lent'] as const;
export type SpoolSource = (typeof SPOOL_SOURCES)[number];

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

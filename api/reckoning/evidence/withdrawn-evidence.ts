/** A submission that was accepted and withdrawn, as a release tells of it. */
export interface WithdrawnEvidence {
  readonly reference: string;
  /** Slug of the variant. */
  readonly variant: string;
  /** Slug of the method. */
  readonly method: string;
  readonly tester: string;
  readonly benchDay: string;
  readonly withdrawnOn: string;
  readonly reason: string;
}

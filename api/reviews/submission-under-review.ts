/** What a decision is made on: the current revision, read under the lock of the submission. */
export interface SubmissionUnderReview {
  readonly id: string;
  readonly reference: string;
  readonly state: string;
  readonly revision: number;
  readonly version: number;
  readonly testerId: string;
  readonly revisionId: string;
  readonly specimens: readonly { readonly id: string; readonly number: number; readonly validity: string }[];
  readonly findings: readonly {
    readonly id: string;
    readonly code: string;
    readonly severity: string;
    readonly resolution: string | null;
  }[];
}

import type { SubmissionEvidence } from './submission-evidence.js';

/** A draw and what was found again, as releases take it: plain JSON. */
export interface RetestsEvidence {
  readonly seed: string;
  /** [%] */
  readonly percent: string;
  /** References that were drawn from, by name. */
  readonly from: readonly string[];
  readonly drawnOn: string;
  /** In the order of the draw; null where nothing accepted is there. */
  readonly drawn: readonly { readonly original: string; readonly again: SubmissionEvidence | null }[];
}

import type { SubmissionContent } from '../contract/submission-content.js';
import type { InputFault } from '../platform/errors/problem.js';

/** One submission as parsed, and how a fault of it is told: for a file, by row and column. */
export interface HandIn {
  readonly content: SubmissionContent;
  readonly rows: readonly [number, number] | null;
  readonly locate: (fault: InputFault) => InputFault;
}

/** What came as JSON: its places are its own. */
export const handInOf = (content: SubmissionContent): HandIn => ({ content, rows: null, locate: (fault) => fault });

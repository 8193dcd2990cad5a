export type Severity = 'blocks' | 'held' | 'note';

/** What a check found on one submission. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  /** Numbers of the specimens it is about; empty for the whole submission. */
  readonly specimens: readonly number[];
  /** Place in the submission's content (RFC 6901); null for the whole. */
  readonly pointer: string | null;
  readonly actual: string;
  readonly expected: string;
  /** For the reviewer. */
  readonly message: string;
  /** For the tester: tells where to look, never what a coded spool is, nor how far off or in which direction. */
  readonly forTester: string;
}

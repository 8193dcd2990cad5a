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
  /** For the tester: tells where to look, never what a coded spool is, nor how far off or in which direction. Null: the tester must not know of it. */
  readonly forTester: string | null;
  /** Whether the code itself would tell in which direction the readings are off. */
  readonly isSealed: boolean;
}

/** Code under which a tester reads every sealed finding. */
export const LOOK_AGAIN = 'readings/look-again';

/** A finding as its tester may read it. */
export interface TesterFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
}

/** @returns what the tester may read; null where even that there is a finding would name the maker */
export function findingForTester({ code, severity, forTester, isSealed }: Finding): TesterFinding | null {
  return forTester === null ? null : { code: isSealed ? LOOK_AGAIN : code, severity, message: forTester };
}

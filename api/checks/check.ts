import { SEALED_INPUTS } from './check-input.js';
import type { CheckInput } from './check-input.js';
import type { Finding, Severity } from './finding.js';

/** What a check reports; the list adds what it knows of the check. */
export type Observation = Omit<Finding, 'code' | 'severity' | 'isSealed'>;

/** A number that a check holds readings against, and how far a method version may move it. */
export interface CheckLimit {
  readonly words: string;
  /** In the unit. */
  readonly value: number;
  /** Unit symbol; empty for a count. */
  readonly unit: string;
  readonly atLeast: number;
  readonly atMost: number;
}

/** One automatic rule. */
export interface Check<LimitName extends string = string> {
  readonly code: string;
  readonly title: string;
  readonly severity: Severity;
  /** Severities that a method version may give it, where it is more than severitiesOf says by itself. */
  readonly mayBe?: readonly Severity[];
  /** Its code tells in which direction the readings are off, so that a tester reads another. */
  readonly isSealed?: true;
  /** All that it looks at; it is handed nothing else. */
  readonly looksAt: readonly (keyof CheckInput)[];
  /** What it looks for and why, for the catalogue page. */
  readonly explains: string;
  /** What is held against what, in words. */
  readonly limit: string;
  /** Numbers of its own that a method version may set; the windows of the method itself are no limits of a check. */
  readonly limits?: Readonly<Record<LimitName, CheckLimit>>;
  /** Where rule and limits come from. */
  readonly source: string;
  /** A submission that triggers it, in a sentence. */
  readonly example: string;
  run(input: CheckInput, limits: Readonly<Record<LimitName, number>>): Observation[];
}

/** Whether its tester is told nothing of it, in a preview or ever: even that there is a finding would tell something of the spool. */
export const isForReviewers = ({ looksAt }: Pick<Check, 'looksAt'>): boolean => looksAt.some((name) => SEALED_INPUTS.includes(name));

/** An observation on the whole submission or some specimens; the tester reads the same words unless told otherwise, and nothing where the check is for reviewers. */
export function observe(
  message: string,
  details: { actual: string; expected: string; specimens?: readonly number[]; pointer?: string; forTester?: string | null },
): Observation {
  const { actual, expected, specimens = [], pointer = null, forTester = message } = details;
  return { specimens, pointer, actual, expected, message, forTester };
}

import type { CheckInput } from './check-input.js';
import type { Finding, Severity } from './finding.js';

/** What a check reports; the list adds what it knows of the check. */
export type Observation = Omit<Finding, 'code' | 'severity' | 'isSealed'>;

/** One automatic rule. */
export interface Check {
  readonly code: string;
  readonly title: string;
  readonly severity: Severity;
  /** Its code tells what the label says or in which direction the readings are off, so that a tester does not read it. */
  readonly isSealed?: true;
  /** What it looks for and why, for the catalogue page. */
  readonly explains: string;
  /** The limit that it uses, in words. */
  readonly limit: string;
  readonly run: (input: CheckInput) => Observation[];
}

/** An observation on the whole submission or some specimens; the tester reads the same words unless told otherwise. */
export function observe(
  message: string,
  details: { actual: string; expected: string; specimens?: readonly number[]; pointer?: string; forTester?: string | null },
): Observation {
  const { actual, expected, specimens = [], pointer = null, forTester = message } = details;
  return { specimens, pointer, actual, expected, message, forTester };
}

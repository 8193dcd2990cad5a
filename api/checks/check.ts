import type { CheckInput } from './check-input.js';
import type { Finding, Severity } from './finding.js';

/** What a check reports; the list adds code and severity. */
export type Observation = Omit<Finding, 'code' | 'severity'>;

/** One automatic rule. */
export interface Check {
  readonly code: string;
  readonly title: string;
  readonly severity: Severity;
  /** What it looks for and why, for the catalogue page. */
  readonly explains: string;
  /** The limit that it uses, in words. */
  readonly limit: string;
  run(input: CheckInput): Observation[];
}

/** An observation on the whole submission or some specimens; the tester reads the same words unless told otherwise. */
export function observe(
  message: string,
  details: { actual: string; expected: string; specimens?: readonly number[]; pointer?: string; forTester?: string },
): Observation {
  const { actual, expected, specimens = [], pointer = null, forTester = message } = details;
  return { specimens, pointer, actual, expected, message, forTester };
}

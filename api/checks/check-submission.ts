import type { CheckInput } from './check-input.js';
import { CHECKS } from './check-list.js';
import type { Finding } from './finding.js';

/** Runs every check of the list over one submission, in the order of the list. */
export function checkSubmission(input: CheckInput): Finding[] {
  return CHECKS.flatMap(({ code, severity, isSealed = false, run }) =>
    run(input).map((observation) => ({ code, severity, isSealed, ...observation })),
  );
}

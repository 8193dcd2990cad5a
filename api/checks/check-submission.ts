import { applyCheck } from './apply-check.js';
import type { CheckInput, PinnedChecks } from './check-input.js';
import { CHECKS } from './check-list.js';
import type { Finding } from './finding.js';

/** Runs the checks over one submission, in the order of the list. */
export const checkSubmission = (input: CheckInput, pinned: PinnedChecks = null): Finding[] =>
  CHECKS.flatMap((check) => applyCheck(check, pinned, input.method.checks, (limits) => check.run(input, limits)));

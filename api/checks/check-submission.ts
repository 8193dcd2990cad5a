import { applyCheck } from './apply-check.js';
import type { CheckInput, PinnedChecks } from './check-input.js';
import { CHECKS } from './check-list.js';
import { isForReviewers } from './check.js';
import type { Check } from './check.js';
import type { Finding } from './finding.js';

/** Checks that speak in a preview: those that look at the tester's own readings, the instruments and the method alone. */
export const PREVIEW_CHECKS: readonly Check[] = CHECKS.filter((check) => !isForReviewers(check));

/** Runs checks over one submission, in the order of the list; each sees what it declares to look at, and nothing else. */
export const checkSubmission = (input: CheckInput, pinned: PinnedChecks = null, checks = CHECKS): Finding[] =>
  checks.flatMap((check) => applyCheck(check, pinned, input.method.checks, (limits) => check.run(declared(input, check), limits)));

const declared = (input: CheckInput, { looksAt }: Check): CheckInput =>
  Object.fromEntries(looksAt.map((name) => [name, input[name]])) as unknown as CheckInput;

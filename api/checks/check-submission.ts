import type { CheckDocument } from '../public-api/release-documents.schemas.js';
import type { CheckInput } from './check-input.js';
import { CHECKS } from './check-list.js';
import { checkSetOf } from './check-set-of.js';
import { settingOf } from './check-settings.js';
import type { Finding } from './finding.js';

const OWN_CHECKS = checkSetOf().checks;

/**
 * Runs the checks over one submission, in the order of the list.
 * @param pinned checks as the edition pinned them; one that came later does not run. Null: all, as the program has them
 */
export function checkSubmission(input: CheckInput, pinned: readonly CheckDocument[] | null = null): Finding[] {
  const byCode = new Map((pinned ?? OWN_CHECKS).map((document) => [document.code, document]));
  return CHECKS.flatMap((check) => {
    const document = byCode.get(check.code);
    if (!document) return [];
    const { code, isSealed = false } = check;
    const { severity, limits } = settingOf(check, document, input.method.checks);
    return check.run(input, limits).map((observation) => ({ code, severity, isSealed, ...observation }));
  });
}

import type { CheckSettings, PinnedChecks } from './check-input.js';
import { isForReviewers } from './check.js';
import type { Check, Observation } from './check.js';
import { checkSetOf } from './check-set-of.js';
import { settingOf } from './check-settings.js';
import type { Finding } from './finding.js';

const OWN_CHECKS = checkSetOf().checks;

/**
 * What a check finds, with the severity and the limits that hold for it.
 * @param pinned a check that came later than these finds nothing; null: all, as the program has them
 * @param settings what the method version sets
 */
export function applyCheck(
  check: Check,
  pinned: PinnedChecks,
  settings: CheckSettings,
  run: (limits: Readonly<Record<string, number>>) => readonly Observation[],
): Finding[] {
  const document = (pinned ?? OWN_CHECKS).find(({ code }) => code === check.code);
  if (!document) return [];
  const { severity, limits } = settingOf(check, document, settings);
  const { code, isSealed = false } = check;
  const toldTo = isForReviewers(check) ? { forTester: null } : {};
  return run(limits).map((observation) => ({ code, severity, isSealed, ...observation, ...toldTo }));
}

import type { CheckDocument } from '../public-api/release-documents.schemas.js';
import type { CheckSettings } from './check-input.js';
import type { Check, Observation } from './check.js';
import { checkSetOf } from './check-set-of.js';
import { settingOf } from './check-settings.js';
import type { Finding } from './finding.js';

/** Checks as an edition pinned them when it opened; null where it was opened before checks were pinned. */
export type PinnedChecks = readonly CheckDocument[] | null;

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
  return run(limits).map((observation) => ({ code, severity, isSealed, ...observation }));
}

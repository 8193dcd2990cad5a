import type { CheckSettings, PinnedChecks } from './check-input.js';
import { isForReviewers } from './check.js';
import type { Check, Observation } from './check.js';
import { checkSetOf } from './check-set-of.js';
import { settingOf } from './check-settings.js';
import type { Setting } from './check-settings.js';
import type { Finding } from './finding.js';

const OWN_CHECKS = checkSetOf().checks;
type Documents = NonNullable<PinnedChecks>;
/** A file of hundreds of submissions asks each check for the same set and the same version each time. */
const known = new WeakMap<Documents, WeakMap<CheckSettings, Map<Check, Setting | null>>>();

/** How a check is applied; null where it came later than the set. */
function knownSetting(check: Check, documents: Documents, settings: CheckSettings): Setting | null {
  const ofSet = known.get(documents) ?? new WeakMap<CheckSettings, Map<Check, Setting | null>>();
  known.set(documents, ofSet);
  const ofVersion = ofSet.get(settings) ?? new Map<Check, Setting | null>();
  ofSet.set(settings, ofVersion);
  let setting = ofVersion.get(check);
  if (setting === undefined) {
    const document = documents.find(({ code }) => code === check.code);
    setting = document ? settingOf(check, document, settings) : null;
    ofVersion.set(check, setting);
  }
  return setting;
}

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
  const setting = knownSetting(check, pinned ?? OWN_CHECKS, settings);
  if (!setting) return [];
  const { severity, limits } = setting;
  const { code, isSealed = false } = check;
  const toldTo = isForReviewers(check) ? { forTester: null } : {};
  return run(limits).map((observation) => ({ code, severity, isSealed, ...observation, ...toldTo }));
}

import type { CheckDocument } from '../contract/documents/release-documents.js';
import type { CheckSettings } from './check-input.js';
import type { Check } from './check.js';
import type { Severity } from './finding.js';

interface Setting {
  readonly severity: Severity;
  readonly limits: Readonly<Record<string, number>>;
}

/**
 * How a check is applied: as the method version sets it, else as the edition pinned it when it opened, else as the program has it
 * (a limit that a check did not have when it was pinned).
 */
export function settingOf(check: Check, pinned: CheckDocument, settings: CheckSettings): Setting {
  const own = settings[check.code];
  const pinnedValues = new Map((pinned.limits ?? []).map(({ name, value }) => [name, Number(value)]));
  const limits = Object.entries(check.limits ?? {}).map(([name, { value }]) => [
    name,
    own?.limits?.[name] ?? pinnedValues.get(name) ?? value,
  ]);
  return { severity: own?.severity ?? pinned.severity, limits: Object.fromEntries(limits) as Record<string, number> };
}

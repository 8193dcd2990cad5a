import type { CheckDocument } from '../contract/documents/release-documents.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { CheckSettings } from './check-input.js';
import { CHECKS } from './check-list.js';
import type { Check } from './check.js';
import type { Severity } from './finding.js';

export interface Setting {
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

/**
 * Severities that a method version may give to a check. One that looks for what chance or a label makes unlikely never blocks by
 * itself: whoever is turned away could try until it passes.
 */
export const severitiesOf = ({ severity, mayBe }: Pick<Check, 'severity' | 'mayBe'>): readonly Severity[] =>
  mayBe ?? (severity === 'blocks' ? ['blocks'] : ['held', 'note']);

/** A code as part of a JSON pointer (RFC 6901). */
const escaped = (part: string): string => part.replaceAll('~', '~0').replaceAll('/', '~1');

/** What a method version may not set: checks and limits that there are not, severities and numbers that the check does not allow. */
export function checkSettingFaults(settings: CheckSettings): InputFault[] {
  return Object.entries(settings).flatMap(([code, setting]) => {
    const pointer = `/checks/${escaped(code)}`;
    const check = CHECKS.find((one) => one.code === code);
    if (!check) {
      const detail = `No check has the code "${code}". Take one of the catalogue of checks.`;
      return [{ pointer, code: 'unknown_check', detail }];
    }
    return [...severityFaults(check, setting, pointer), ...limitFaults(check, setting, pointer)];
  });
}

function severityFaults(check: Check, { severity }: CheckSettings[string], pointer: string): InputFault[] {
  const allowed = severitiesOf(check);
  if (severity === undefined || allowed.includes(severity)) return [];
  const detail = `Found "${severity}", expected ${allowed.join(' or ')}: ${check.code} is never anything else.`;
  return [{ pointer: `${pointer}/severity`, code: 'severity_not_allowed', detail }];
}

function limitFaults({ code, limits = {} }: Check, { limits: set = {} }: CheckSettings[string], pointer: string): InputFault[] {
  return Object.entries(set).flatMap(([name, value]) => {
    const at = `${pointer}/limits/${escaped(name)}`;
    const limit = Object.hasOwn(limits, name) ? limits[name] : undefined;
    if (!limit) {
      const known = Object.keys(limits).join(', ') || 'none';
      return [{ pointer: at, code: 'unknown_limit', detail: `${code} has no limit "${name}"; those that can be set: ${known}.` }];
    }
    const { atLeast, atMost, unit, words } = limit;
    if (value >= atLeast && value <= atMost) return [];
    return [
      { pointer: at, code: 'out_of_range', detail: `${words}: found ${value}, expected ${atLeast} to ${atMost} ${unit}`.trim() + '.' },
    ];
  });
}

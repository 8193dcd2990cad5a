import type { InputFault } from '../platform/errors/problem.js';
import { CHECKS } from './check-list.js';
import type { CheckSettings } from './check-input.js';
import type { Check } from './check.js';
import { severitiesOf } from './check.js';

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

type Setting = CheckSettings[string];

function severityFaults(check: Check, { severity }: Setting, pointer: string): InputFault[] {
  const allowed = severitiesOf(check);
  if (severity === undefined || allowed.includes(severity)) return [];
  const detail = `Found "${severity}", expected ${allowed.join(' or ')}: ${check.code} is never anything else.`;
  return [{ pointer: `${pointer}/severity`, code: 'severity_not_allowed', detail }];
}

function limitFaults({ code, limits = {} }: Check, { limits: set = {} }: Setting, pointer: string): InputFault[] {
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

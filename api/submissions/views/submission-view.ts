import { findingForTester } from '../../checks/finding.js';
import type { Finding } from '../../checks/finding.js';
import type { SpecimenInSi } from '../../readings/readings-si.js';
import type { AreaRule } from '../../readings/submission-figures.js';
import { toTraceEvidence } from '../../readings/traces/trace-evidence.js';
import type { StoredTrace } from '../../readings/traces/trace-evidence.js';
import { READING_ROLES } from '../../contract/submission-content.js';
import type { ReadingRole } from '../../contract/submission-content.js';
import type { SubmissionResponse } from '../../contract/endpoints/submissions.js';

/** SI unit in which the readings of a role are kept. */
export const siUnitOf = (role: string): string => ({ force: 'N', time: 's', length: 'm', mass: 'kg' })[READING_ROLES[role as ReadingRole]];

/** An exact decimal as the database gives it. */
interface StoredDecimal {
  toFixed(): string;
}

export interface StoredSpecimen {
  readonly number: number;
  readonly condition: string;
  readonly validity: string;
  readonly invalidReason: string | null;
  readonly setAside: { readonly reason: string } | null;
  readonly trace?: StoredTrace | null;
  readonly readings: readonly {
    readonly role: string;
    readonly station: number | null;
    readonly enteredText: string;
    readonly enteredUnit: string;
    readonly valueSi: StoredDecimal;
  }[];
}

/** A stored specimen as the figures take it: set aside, invalid or valid. */
export function toSpecimenInSi({ number, condition, validity, invalidReason, setAside, readings, trace }: StoredSpecimen): SpecimenInSi {
  return {
    number,
    condition: condition as SpecimenInSi['condition'],
    state: setAside ? 'setAside' : (validity as 'valid' | 'invalid'),
    reason: setAside?.reason ?? invalidReason,
    readings: readings.map(({ role, station, enteredText, enteredUnit, valueSi }) => ({
      role: role as ReadingRole,
      station,
      enteredText,
      enteredUnit,
      valueSi: valueSi.toFixed(),
      siUnit: siUnitOf(role),
    })),
    ...(trace ? { trace: toTraceEvidence(trace) } : {}),
  };
}

export function toSpecimenAnswer({ number, condition, state, reason, readings }: SpecimenInSi): SubmissionResponse['specimens'][number] {
  return {
    number,
    condition,
    state,
    reason,
    readings: readings.map(({ role, station, enteredText, enteredUnit, valueSi, siUnit }) => ({
      role,
      station,
      entered: { text: enteredText, unit: enteredUnit },
      value: valueSi,
      unit: siUnit,
    })),
  };
}

/** Figures as the tester may read them: a cross-section of solid material comes from the density of the line, and would tell it. */
export const figuresForTester = (figures: object, areaFrom: AreaRule): Record<string, unknown> => ({
  ...figures,
  ...(areaFrom === 'solid' ? { areaMm2: null } : {}),
});

type FindingAnswer = SubmissionResponse['findings'][number];

/** A finding with its numbers and limit, for reviewers and editors. */
export function toFullFinding(
  id: string | null,
  { code, severity, message, ...detail }: Finding,
  resolution: string | null,
): FindingAnswer {
  return { id, code, severity, message, detail, resolution };
}

/** A finding as its tester may read it: where to look, never a number of a claim, a maker or a line. None when its mere presence would tell. */
export function toTesterFinding(id: string | null, found: Finding): FindingAnswer[] {
  const safe = findingForTester(found);
  return safe ? [{ id, ...safe, detail: null, resolution: null }] : [];
}

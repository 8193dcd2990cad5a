import { parseQuantity } from '../measurement/units/parse-quantity.js';
import type { TraceEvidence } from './traces/trace-evidence.js';
import type { ReadingRole, SpecimenContent } from '../contract/submission-content.js';

/** A reading as entered, beside its exact SI value (N, s, m or kg). */
export interface ReadingInSi {
  readonly role: ReadingRole;
  readonly station: number | null;
  readonly enteredText: string;
  readonly enteredUnit: string;
  readonly valueSi: string;
  readonly siUnit: string;
}

/** A specimen with its readings in SI; only a valid one counts. */
export interface SpecimenInSi {
  readonly number: number;
  readonly condition: 'untreated' | 'treated';
  readonly state: 'valid' | 'invalid' | 'setAside';
  readonly reason: string | null;
  readonly readings: readonly ReadingInSi[];
  /** Record of its pull, where there is one. */
  readonly trace?: TraceEvidence;
}

/** Puts exact SI values beside what was entered; loses nothing. */
export function toSpecimensInSi(specimens: readonly SpecimenContent[]): SpecimenInSi[] {
  return specimens.map(({ number, condition, validity, invalidReason, readings }) => ({
    number,
    condition,
    state: validity,
    reason: invalidReason ?? null,
    readings: readings.map(({ role, station, value, unit }) => {
      const { si, siUnit } = parseQuantity(value, unit);
      return { role, station, enteredText: value, enteredUnit: unit, valueSi: si, siUnit };
    }),
  }));
}

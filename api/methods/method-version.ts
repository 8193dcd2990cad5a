import type { InputFault } from '../platform/errors/problem.js';

const DAY_MS = 86_400_000;

/** A calendar date as stored → ISO 8601 text. */
export const toDateText = (date: Date): string => date.toISOString().slice(0, 10);

/**
 * Last bench day of a version. A version is never changed, so one without a stated end is ended by its successor.
 * @param statedUntil last day as stated, or null
 * @param nextFrom first day of the next version, or null
 * @returns the earlier of the stated day and the day before the next version; null while neither is known
 */
export function lastDay(statedUntil: Date | null, nextFrom: Date | null): string | null {
  if (statedUntil) return toDateText(statedUntil);
  return nextFrom ? toDateText(new Date(nextFrom.getTime() - DAY_MS)) : null;
}

interface DatedVersion {
  readonly number: number;
  readonly effectiveFrom: Date;
  readonly effectiveUntil: Date | null;
}

/**
 * Whether a version follows the last one: its number is the next, and its first day is after every day of the last.
 * A last version without a stated end ends the day before, so that it must have begun by then.
 * @param last latest version on record, if any
 * @param next number and first day (ISO 8601) of the version to add
 * @param used last bench day of what was handed in under the method: it would come under another version than it was pulled by
 */
export function successionFaults(
  last: DatedVersion | undefined,
  next: { readonly number: number; readonly effectiveFrom: string },
  used: string | null = null,
): InputFault[] {
  const number = (last?.number ?? 0) + 1;
  const taken = last && toDateText(last.effectiveUntil ?? last.effectiveFrom);
  return [
    ...(next.number === number
      ? []
      : [
          {
            pointer: '/number',
            detail: `Found ${next.number}, expected ${number}: versions are numbered one by one. Give it that number.`,
            code: 'not_consecutive',
          },
        ]),
    ...(taken === undefined || next.effectiveFrom > taken
      ? []
      : [
          {
            pointer: '/effectiveFrom',
            detail: `Found ${next.effectiveFrom}, expected a day after ${taken}: version ${number - 1} holds until then. Take a later day.`,
            code: 'overlaps',
          },
        ]),
    ...(used === null || next.effectiveFrom > used
      ? []
      : [
          {
            pointer: '/effectiveFrom',
            detail: `Found ${next.effectiveFrom}, expected a day after ${used}: submissions of that bench day were handed in under the version before, and would lose it. Take a later day.`,
            code: 'already_used',
          },
        ]),
  ];
}

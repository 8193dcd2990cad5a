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

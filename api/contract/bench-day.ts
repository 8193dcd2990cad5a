/** Zone → its clock; making one takes longer than all else that is done with a date. */
const clocks = new Map<string, Intl.DateTimeFormat>();

/**
 * Date at the bench now.
 * @param now moment in time
 * @param zone time zone of the IANA database, e.g. Europe/Lisbon
 * @returns calendar date, ISO 8601
 * @throws RangeError for a zone that is not in it
 */
export function dateAtBench(now: Date, zone: string): string {
  // The Swedish form of a date is the one of ISO 8601.
  const name = zone.toLowerCase();
  const clock = clocks.get(name) ?? new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short' });
  clocks.set(name, clock);
  return clock.format(now);
}

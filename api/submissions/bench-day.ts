/**
 * Date at the bench now.
 * @param now moment in time
 * @param zone time zone of the IANA database, e.g. Europe/Lisbon
 * @returns calendar date, ISO 8601
 */
export function dateAtBench(now: Date, zone: string): string {
  // The Swedish form of a date is the one of ISO 8601.
  return new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short' }).format(now);
}

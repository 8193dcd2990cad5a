/** What a reader may conclude from a group: `Group 1` with `7 variants, too close to call`; its later rows stand under its name again. */
export function groupWords(group: number, count: number, isContinued = false): { name: string; says: string } {
  const name = group === 1 ? 'Top group' : `Group ${group}`;
  if (isContinued) return { name: `${name}, continued`, says: `of ${count} variants in all` };
  return { name, says: count === 1 ? 'one variant, apart from its neighbours' : `${count} variants, too close to call among themselves` };
}

/** The places that the evidence allows: `2 to 7`, or `2` when it allows one only. */
export function placesAllowed(interval: { low: number; high: number } | null): string {
  if (interval === null) return 'not stated';
  return interval.low === interval.high ? String(interval.low) : `${interval.low} to ${interval.high}`;
}

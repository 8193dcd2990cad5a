import { say } from './say.js';
/** The places that the evidence allows: `2 to 7`, or `2` when it allows one only. */
export function placesAllowed(interval: { low: number; high: number } | null): string {
  if (interval === null) return say`not stated`;
  return interval.low === interval.high ? String(interval.low) : say`${interval.low} to ${interval.high}`;
}

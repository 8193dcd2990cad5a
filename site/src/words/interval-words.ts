import { say } from './say.js';
/** An interval as published: `1143 to 1211`, or words where it was not stated. */
export function intervalWords(ends: { low: string | null; high: string | null }): string {
  return ends.low === null || ends.high === null ? say`not stated` : say`${ends.low} to ${ends.high}`;
}

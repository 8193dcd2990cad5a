import type { InputFault } from '../errors/problem.js';

const HOURS_AHEAD = 14;

/** A day that has not begun anywhere on earth yet (UTC+14 is the first) cannot be when something happened. */
export function futureFaults(pointer: string, day: string, now: Date): InputFault[] {
  const latest = new Date(now.getTime() + HOURS_AHEAD * 3_600_000).toISOString().slice(0, 10);
  return day <= latest
    ? []
    : [{ pointer, detail: `Found ${day}, which is to come; expected ${latest} or before. Correct the day.`, code: 'in_the_future' }];
}

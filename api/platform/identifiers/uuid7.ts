import { randomUUID } from 'node:crypto';

const MOST_PER_MS = 4096;

let lastMs = 0;
let countInMs = 0;
/** What those of one millisecond share, written once for all of them. */
let beginning = '';

/**
 * A UUID of version 7. Those of one process sort in the order they were made, also within a millisecond (a 12-bit counter).
 * @see RFC 9562, section 5.7 and method 1 of section 6.2
 */
export function uuid7(): string {
  const now = Date.now();
  countInMs += 1;
  if (now > lastMs) beginAt(now);
  else if (countInMs === MOST_PER_MS) beginAt(lastMs + 1);
  // The second half is that of a random one, whose entropy Node draws ahead.
  return `${beginning}${countInMs.toString(16).padStart(3, '0')}${randomUUID().slice(18)}`;
}

function beginAt(ms: number): void {
  const time = ms.toString(16).padStart(12, '0');
  [lastMs, countInMs, beginning] = [ms, 0, `${time.slice(0, 8)}-${time.slice(8)}-7`];
}

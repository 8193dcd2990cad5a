import { randomUUID } from 'node:crypto';

const MOST_PER_MS = 4096;

let lastMs = 0;
let countInMs = 0;

/**
 * A UUID of version 7. Those of one process sort in the order they were made, also within a millisecond (a 12-bit counter).
 * @see RFC 9562, section 5.7 and method 1 of section 6.2
 */
export function uuid7(): string {
  const now = Date.now();
  countInMs = now > lastMs ? 0 : countInMs + 1;
  lastMs = Math.max(now, lastMs);
  if (countInMs === MOST_PER_MS) {
    lastMs += 1;
    countInMs = 0;
  }
  const time = lastMs.toString(16).padStart(12, '0');
  // The second half is that of a random one, whose entropy Node draws ahead.
  return `${time.slice(0, 8)}-${time.slice(8)}-7${countInMs.toString(16).padStart(3, '0')}${randomUUID().slice(18)}`;
}

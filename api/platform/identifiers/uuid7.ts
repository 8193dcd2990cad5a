import { randomBytes } from 'node:crypto';

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
  const bytes = randomBytes(16);
  bytes.writeUIntBE(lastMs, 0, 6);
  bytes.writeUInt16BE(0x7000 | countInMs, 6);
  bytes[8] = 0x80 | (bytes.readUInt8(8) & 0x3f);
  const hex = bytes.toString('hex');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

import { createHash, randomBytes, randomInt } from 'node:crypto';

/** Makes identifiers and secrets. */
export class Identifiers {
  /** A secret of 256 bits, base64url. */
  secret(): string {
    return randomBytes(32).toString('base64url');
  }

  /** What makes a digest unguessable until it is told with what it was made of: 256 bits, base64url. */
  salt(): string {
    return this.secret();
  }

  /** A whole number from 0 to below the limit, unpredictable. */
  below(limit: number): number {
    return randomInt(limit);
  }
}

/** SHA-256 of a text or bytes, hex. */
export function sha256(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

/** Size and SHA-256 of a text that comes in parts. */
export function sealOf(parts: Iterable<string>): { sizeBytes: number; sha256: string } {
  const hash = createHash('sha256');
  let sizeBytes = 0;
  for (const part of parts) {
    hash.update(part);
    sizeBytes += Buffer.byteLength(part);
  }
  return { sizeBytes, sha256: hash.digest('hex') };
}

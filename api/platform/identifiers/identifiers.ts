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

import { createHash } from 'node:crypto';
import { Transform } from 'node:stream';
import type { TransformCallback } from 'node:stream';

/** Passes bytes on and knows their number and digest when all have passed. */
export class DigestStream extends Transform {
  sizeBytes = 0;
  private readonly hash = createHash('sha256');

  override _transform(chunk: Buffer, _encoding: BufferEncoding, done: TransformCallback): void {
    this.sizeBytes += chunk.length;
    this.hash.update(chunk);
    done(null, chunk);
  }

  /** SHA-256, hex; ask once, at the end. */
  digest(): string {
    return this.hash.digest('hex');
  }
}

import { mkdtemp, open, rm } from 'node:fs/promises';
import type { FileHandle } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PIECE_BYTES = 65_536;

/** Where in a spooled file some of its bytes lie. */
export interface Piece {
  readonly at: number;
  readonly length: number;
}

/** Bytes that wait on disk, so that they are whole before the work on them begins and take no memory. Nothing is left of them, however the program ends. */
export class SpooledFile {
  private length = 0;

  private constructor(private readonly handle: FileHandle) {}

  static async empty(): Promise<SpooledFile> {
    const folder = await mkdtemp(join(tmpdir(), 'fairpull-'));
    const handle = await open(join(folder, 'spooled'), 'w+', 0o600);
    // A file without a name is gone when it is closed.
    await rm(folder, { recursive: true });
    return new SpooledFile(handle);
  }

  /** Takes the bytes in; what goes wrong with them goes on to the caller. */
  static async of(bytes: AsyncIterable<Uint8Array>): Promise<SpooledFile> {
    const file = await SpooledFile.empty();
    try {
      for await (const chunk of bytes) await file.add(chunk);
    } catch (error) {
      await file.close();
      throw error;
    }
    return file;
  }

  /** Adds bytes to its end. */
  async add(bytes: Uint8Array): Promise<Piece> {
    const piece = { at: this.length, length: bytes.length };
    await this.handle.writeFile(bytes);
    this.length += bytes.length;
    return piece;
  }

  /** From the beginning. */
  async *read(): AsyncGenerator<Uint8Array> {
    for (let at = 0; at < this.length; at += PIECE_BYTES) yield this.piece({ at, length: Math.min(PIECE_BYTES, this.length - at) });
  }

  async piece({ at, length }: Piece): Promise<Uint8Array> {
    const bytes = Buffer.allocUnsafe(length);
    for (let read = 0; read < length;) {
      const { bytesRead } = await this.handle.read(bytes, read, length - read, at + read);
      if (bytesRead === 0) throw new Error('A file that waits on disk was cut off.');
      read += bytesRead;
    }
    return bytes;
  }

  async close(): Promise<void> {
    await this.handle.close();
  }
}

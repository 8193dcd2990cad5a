import { mkdtemp, open, rm } from 'node:fs/promises';
import type { FileHandle } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PIECE_BYTES = 65_536;
const LINE_FEED = 0x0a;

/** Bytes that wait on disk, so that they are whole before the work on them begins and take no memory. Nothing is left of them, however the program ends. */
export class SpooledFile {
  private constructor(private readonly handle: FileHandle) {}

  /** Takes the bytes in; what goes wrong with them goes on to the caller. */
  static async of(bytes: AsyncIterable<Uint8Array>): Promise<SpooledFile> {
    const folder = await mkdtemp(join(tmpdir(), 'fairpull-'));
    const handle = await open(join(folder, 'spooled'), 'w+', 0o600);
    // A file without a name is gone when it is closed.
    await rm(folder, { recursive: true });
    try {
      for await (const chunk of bytes) await handle.writeFile(chunk);
    } catch (error) {
      await handle.close();
      throw error;
    }
    return new SpooledFile(handle);
  }

  /** From the beginning. */
  async *read(): AsyncGenerator<Uint8Array> {
    for (let at = 0; ;) {
      const { bytesRead, buffer } = await this.handle.read(Buffer.allocUnsafe(PIECE_BYTES), 0, PIECE_BYTES, at);
      if (bytesRead === 0) return;
      at += bytesRead;
      yield buffer.subarray(0, bytesRead);
    }
  }

  /** Line by line from the beginning; no more of it is read than is asked for. */
  async *lines(): AsyncGenerator<string> {
    let begun: Uint8Array[] = [];
    for await (const piece of this.read()) {
      let from = 0;
      for (let end = piece.indexOf(LINE_FEED); end !== -1; end = piece.indexOf(LINE_FEED, from)) {
        yield Buffer.concat([...begun, piece.subarray(from, end)]).toString();
        [begun, from] = [[], end + 1];
      }
      if (from < piece.length) begun.push(piece.subarray(from));
    }
    if (begun.length > 0) yield Buffer.concat(begun).toString();
  }

  async close(): Promise<void> {
    await this.handle.close();
  }
}

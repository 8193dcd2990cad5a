import { foreignFile, LONGEST_MARK } from './foreign-file.js';
import { UnreadableFile } from './row-fault.js';

const LINE_FEED = 0x0a;
/** Bytes of a character that may still be open at the end of a chunk. */
const MOST_OPEN_BYTES = 3;

/**
 * Decodes UTF-8 piece by piece, with or without a byte-order mark.
 * @param bytes the file as a stream
 * @throws UnreadableFile with the line where a byte is not UTF-8, and for a workbook or UTF-16, whose first bytes tell
 */
export async function* readText(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let lineFeeds = 0;
  let tail: Uint8Array = new Uint8Array();
  let head: Uint8Array | null = new Uint8Array();
  for await (const chunk of bytes) {
    if (head) {
      head = Buffer.concat([head, chunk.subarray(0, LONGEST_MARK)]);
      const fault = foreignFile(head);
      if (fault) throw new UnreadableFile(fault);
      if (head.length >= LONGEST_MARK) head = null;
    }
    try {
      yield decoder.decode(chunk, { stream: true });
    } catch {
      throw notUtf8(1 + lineFeeds + lineFeedsBeforeFault(tail, chunk));
    }
    lineFeeds += countLineFeeds(chunk);
    tail = chunk.slice(-MOST_OPEN_BYTES);
  }
  try {
    yield decoder.decode();
  } catch {
    throw notUtf8(1 + lineFeeds);
  }
}

const countLineFeeds = (bytes: Uint8Array): number => {
  let count = 0;
  for (let at = bytes.indexOf(LINE_FEED); at !== -1; at = bytes.indexOf(LINE_FEED, at + 1)) count += 1;
  return count;
};

/** Line feeds of the chunk before its first faulty line; the end of the chunk before may begin that line's first character. */
function lineFeedsBeforeFault(tail: Uint8Array, chunk: Uint8Array): number {
  const afterLineFeed = tail.slice(tail.lastIndexOf(LINE_FEED) + 1);
  const opening = afterLineFeed.findLastIndex((byte) => byte >= 0xc0);
  const bytes = Buffer.concat([opening === -1 ? new Uint8Array() : afterLineFeed.slice(opening), chunk]);
  let lines = 0;
  for (let from = 0; from < bytes.length; lines += 1) {
    const end = bytes.indexOf(LINE_FEED, from);
    const isLast = end === -1;
    const line = bytes.subarray(from, isLast ? bytes.length : end);
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(line, { stream: isLast });
    } catch {
      return lines;
    }
    from = isLast ? bytes.length : end + 1;
  }
  return lines;
}

const notUtf8 = (row: number): UnreadableFile =>
  new UnreadableFile({
    code: 'file_not_utf8',
    row,
    column: '',
    found: 'bytes that are not UTF-8',
    expected: 'UTF-8',
    message: `Line ${row} is not UTF-8. Save the file again with the encoding UTF-8.`,
  });

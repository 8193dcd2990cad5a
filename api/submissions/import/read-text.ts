import { rowFault } from './row-fault.js';
import type { RowFault } from './row-fault.js';

export const LARGEST_FILE_BYTES = 50 * 1024 * 1024;

/** A file that cannot be read at all, told as a fault. */
export class UnreadableFile extends Error {
  constructor(readonly fault: RowFault) {
    super(fault.message);
  }
}

/**
 * Decodes UTF-8 piece by piece, with or without a byte-order mark.
 * @param bytes the file as a stream
 * @throws UnreadableFile above 50 MB, or where a byte is not UTF-8
 */
export async function* readText(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let size = 0;
  for await (const chunk of bytes) {
    size += chunk.byteLength;
    if (size > LARGEST_FILE_BYTES) {
      throw new UnreadableFile(
        rowFault(
          0,
          '',
          `more than ${LARGEST_FILE_BYTES} bytes`,
          `at most ${LARGEST_FILE_BYTES} bytes`,
          'The file is larger than 50 MB. Split it and send the parts.',
        ),
      );
    }
    yield decode(decoder, chunk);
  }
  yield decode(decoder);
}

function decode(decoder: InstanceType<typeof TextDecoder>, chunk?: Uint8Array): string {
  try {
    return chunk ? decoder.decode(chunk, { stream: true }) : decoder.decode();
  } catch {
    throw new UnreadableFile(
      rowFault(0, '', 'bytes that are not UTF-8', 'UTF-8', 'The file is not UTF-8. Save it again with the encoding UTF-8.'),
    );
  }
}

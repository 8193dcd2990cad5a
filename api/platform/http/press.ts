import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

/** Coding of HTTP → end of the name of a file in that form. */
export const PRESSED_AS = { br: 'br', gzip: 'gz' } as const;
export type Coding = keyof typeof PRESSED_AS;

/** Below this a pressed form saves nothing. */
export const SMALLEST_TO_PRESS = 1024;
/** Beyond this it takes many times as long for a few per cent. */
const BROTLI_QUALITY = 6;
const pressBrotli = promisify(brotliCompress);
const pressGzip = promisify(gzip);

/** Bytes in a coding of HTTP. */
export function press(bytes: Uint8Array, coding: Coding): Promise<Buffer> {
  if (coding === 'gzip') return pressGzip(bytes);
  const params = { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  return pressBrotli(bytes, { params });
}

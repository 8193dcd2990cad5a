import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

/** Coding of HTTP → end of the name of a file in that form. */
export const COMPRESSED_AS = { br: 'br', gzip: 'gz' } as const;
export type Coding = keyof typeof COMPRESSED_AS;

/** Below this a compressed form saves nothing. */
export const SMALLEST_TO_COMPRESS = 1024;
/** Beyond this it takes many times as long for a few per cent. */
const BROTLI_QUALITY = 6;
const compressBrotli = promisify(brotliCompress);
const compressGzip = promisify(gzip);

/** Bytes in a coding of HTTP. */
export function compressAs(bytes: Uint8Array, coding: Coding): Promise<Buffer> {
  if (coding === 'gzip') return compressGzip(bytes);
  const params = { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  return compressBrotli(bytes, { params });
}

import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, brotliDecompress, constants } from 'node:zlib';

/**
 * What was written by the bench work of a winter, from the opening to the last review, when it was played into a house through the API.
 * Nothing that is computed for publication is in it: each house publishes its editions itself.
 */
export interface KeptWinter {
  /** Checksums of the migrations of that house, oldest first: the rows fit no other schema. */
  readonly migrations: readonly string[];
  /** Spool of the demo → blind code, of this winter and those before. */
  readonly blindCodes: readonly (readonly [spool: string, code: string])[];
  readonly tables: readonly KeptTable[];
}

/** Rows of a table that are new or changed, as whole rows in the text form of COPY. */
export interface KeptTable {
  readonly name: string;
  readonly columns: readonly string[];
  readonly key: readonly string[];
  readonly rows: readonly string[];
}

const placeOf = (season: string): string => fileURLToPath(new URL(`./${season}.json.br`, import.meta.url));

/** @returns null where none is kept */
export async function readKeptWinter(season: string): Promise<KeptWinter | null> {
  if (!existsSync(placeOf(season))) return null;
  const bytes = await promisify(brotliDecompress)(await readFile(placeOf(season)));
  return JSON.parse(bytes.toString('utf8')) as KeptWinter;
}

export async function writeKeptWinter(season: string, winter: KeptWinter): Promise<void> {
  const bytes = Buffer.from(JSON.stringify(winter));
  const settings = {
    [constants.BROTLI_PARAM_LGWIN]: constants.BROTLI_MAX_WINDOW_BITS,
    [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
  };
  await writeFile(placeOf(season), await promisify(brotliCompress)(bytes, { params: settings }));
}

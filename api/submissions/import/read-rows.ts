import { CsvError, parse } from 'csv-parse';
import { Readable } from 'node:stream';
import { UnreadableFile } from './row-fault.js';

/** A record with the line of the file on which it ends. */
export interface CsvRow {
  readonly separator: Separator;
  readonly row: number;
  readonly cells: string[];
}

export type Separator = ',' | ';';

const LONGEST_RECORD = 100_000;

/** What separates the cells: whichever of semicolon and comma the header has more of. */
export const separatorOf = (headerLine: string): Separator => (headerLine.split(';').length > headerLine.split(',').length ? ';' : ',');

/**
 * Reads RFC 4180 records from text; finds the separator by itself. Blank lines, and lines of separators only, are passed over.
 * @returns as many at once as lie ready: waiting for each would take longer than reading it
 * @throws UnreadableFile with the line from which on it is not CSV
 */
export async function* readRows(text: AsyncGenerator<string>): AsyncGenerator<CsvRow[]> {
  let head = '';
  for (let next = await text.next(); !next.done; next = await text.next()) {
    head += next.value;
    if (/\S[^\r\n]*[\r\n]/.test(head)) break;
  }
  const separator = separatorOf(/\S[^\r\n]*/.exec(head)?.[0] ?? '');
  const parser = parse({
    delimiter: separator,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    skip_empty_lines: true,
    skip_records_with_empty_values: true,
    max_record_size: LONGEST_RECORD,
    info: true,
    trim: true,
  });
  const source = Readable.from(whole(head, text));
  source.on('error', (error) => parser.destroy(error)).pipe(parser);
  try {
    for await (const first of parser as AsyncIterable<Parsed>) {
      const rows = [toRow(separator, first)];
      for (let next = parser.read() as Parsed | null; next !== null; next = parser.read() as Parsed | null)
        rows.push(toRow(separator, next));
      yield rows;
    }
  } catch (error) {
    throw error instanceof CsvError ? notCsv(error) : error;
  }
}

interface Parsed {
  readonly record: string[];
  readonly info: { readonly lines: number };
}

const toRow = (separator: Separator, { record, info }: Parsed): CsvRow => ({ separator, row: info.lines, cells: record });

async function* whole(head: string, rest: AsyncGenerator<string>): AsyncGenerator<string> {
  yield head;
  yield* rest;
}

function notCsv(error: CsvError): UnreadableFile {
  const row = Number(error.lines ?? 0);
  return new UnreadableFile({
    code: 'file_not_csv',
    row,
    column: '',
    found: error.message,
    expected: 'CSV as in RFC 4180',
    message: `The file is not CSV up to line ${row}: ${error.message}. Look for an unmatched quotation mark at or before it.`,
  });
}

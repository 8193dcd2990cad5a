import { CsvError, parse } from 'csv-parse';
import { Readable } from 'node:stream';
import { LONGEST_RECORD, MOST_LISTED } from './file-limits.js';
import { UnreadableFile } from './row-fault.js';
import { notCsv, tooManyWidths, withoutHeader } from './row-fault-words.js';
import { declaredSeparator, separatorOfHeader } from './separator.js';
import type { Separator } from './separator.js';

/** A record with the line of the file on which it ends. */
export interface CsvRow {
  readonly separator: Separator;
  readonly row: number;
  readonly cells: string[];
}

/**
 * Reads RFC 4180 records from text; finds the separator by itself. Blank lines, lines of separators only and a line "sep=" are passed over.
 * @returns as many at once as lie ready: waiting for each would take longer than reading it
 * @throws UnreadableFile with the line from which on it is not CSV
 */
export async function* readRows(text: AsyncGenerator<string>): AsyncGenerator<CsvRow[]> {
  const { pieces, line } = await headOf(text);
  const declared = declaredSeparator(line);
  const separator = declared ?? separatorOfHeader(line);
  const parser = parse({
    delimiter: separator,
    record_delimiter: ['\r\n', '\n', '\r'],
    relax_column_count: true,
    skip_empty_lines: true,
    max_record_size: LONGEST_RECORD,
    info: true,
    trim: true,
    on_record: takeRecords(0),
  });
  const source = Readable.from(whole(pieces, text));
  source.on('error', (error) => parser.destroy(error)).pipe(parser);
  let isDeclaration = declared !== null;
  try {
    for await (const first of parser as AsyncIterable<Parsed>) {
      const rows = isDeclaration ? [] : [toRow(separator, first)];
      isDeclaration = false;
      for (let next = parser.read() as Parsed | null; next !== null; next = parser.read() as Parsed | null)
        rows.push(toRow(separator, next));
      yield rows;
    }
  } catch (error) {
    throw error instanceof CsvError ? new UnreadableFile(notCsv(error)) : error;
  }
}

/** A record, its line, and how many records were of another width than the first until then. */
export interface Parsed {
  readonly record: string[];
  readonly info: { readonly lines: number; readonly invalid_field_length: number };
}

/**
 * Passes over records of separators only. Records of another width than the first cost a parser dear: after so many the file is not read further.
 * @param linesAbove lines of the file before the text that is parsed
 * @returns what a parser asks of each record; with "info" on it is handed the record with its line, which its types do not know
 * @throws UnreadableFile when it is called
 */
export const takeRecords =
  (linesAbove: number) =>
  (record: unknown): string[] | null => {
    const { record: cells, info } = record as Parsed;
    if (info.invalid_field_length > MOST_LISTED) throw tooManyWidths(linesAbove + info.lines, info.invalid_field_length);
    return cells.every((cell) => cell === '') ? null : (record as string[]);
  };

const toRow = (separator: Separator, { record, info }: Parsed): CsvRow => ({ separator, row: info.lines, cells: record });

/**
 * Takes in no more of the text than its first line that is not blank.
 * @returns that line without its end, and all that was taken in
 * @throws UnreadableFile when there is no end of it within the length of a row
 */
async function headOf(text: AsyncGenerator<string>): Promise<{ pieces: string[]; line: string }> {
  const pieces: string[] = [];
  const lines: string[] = [];
  let length = 0;
  for (let next = await text.next(); !next.done; next = await text.next()) {
    pieces.push(next.value);
    length += next.value.length;
    const rest = lines.length === 0 ? next.value.trimStart() : next.value;
    const end = rest.search(/[\r\n]/);
    if (rest !== '') lines.push(end === -1 ? rest : rest.slice(0, end));
    if (end !== -1) break;
    if (length > LONGEST_RECORD) throw withoutHeader(length);
  }
  return { pieces, line: lines.join('') };
}

async function* whole(head: readonly string[], rest: AsyncGenerator<string>): AsyncGenerator<string> {
  yield* head;
  yield* rest;
}

import { parse } from 'csv-parse';
import { Readable } from 'node:stream';

/** A record with the line of the file on which it ends. */
export interface CsvRow {
  readonly row: number;
  readonly cells: string[];
}

/** What separates the cells: whichever of semicolon and comma the header has more of. */
export const separatorOf = (headerLine: string): ',' | ';' => (headerLine.split(';').length > headerLine.split(',').length ? ';' : ',');

/** Reads RFC 4180 records from text; finds the separator by itself, which the first yield tells. */
export async function* readRows(text: AsyncGenerator<string>): AsyncGenerator<{ separator: ',' | ';' } & CsvRow> {
  let head = '';
  let isEnded = false;
  while (!head.includes('\n') && !isEnded) {
    const next = await text.next();
    if (next.done) isEnded = true;
    else head += next.value;
  }
  const separator = separatorOf(head.split('\n')[0] ?? '');
  const parser = parse({ delimiter: separator, relax_column_count: true, skip_empty_lines: true, info: true, trim: true });
  const whole = async function* () {
    yield head;
    yield* text;
  };
  const source = Readable.from(whole());
  source.on('error', (error) => parser.destroy(error)).pipe(parser);
  for await (const { record, info } of parser as AsyncIterable<{ record: string[]; info: { lines: number } }>) {
    yield { separator, row: info.lines, cells: record };
  }
}

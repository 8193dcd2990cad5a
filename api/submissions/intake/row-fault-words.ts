/** What is said of rows that cannot be read: each with what was found, what was expected, what to do. Pure. */
import type { CsvError } from 'csv-parse';
import { LONGEST_RECORD, MOST_SUBMISSIONS } from './file-limits.js';
import type { FileRow } from './file-row.js';
import { UnreadableFile } from './row-fault.js';
import type { RowFault } from './row-fault.js';

/** Rows of one submission that stand apart. @param marks columns that tell submissions apart */
export function apart(
  row: FileRow,
  { first, last }: { readonly first: number; readonly last: number },
  marks: readonly string[],
): RowFault {
  const found = marks
    .filter((name) => row.text(name) !== '')
    .map((name) => `${row.columnOf(name)} ${row.text(name).slice(0, 60)}`)
    .join(', ');
  const rows = first === last ? `row ${first}` : `rows ${first} to ${last}`;
  const orMark = row.text('submission') === '' ? '; if it is another submission, mark the two in a column "submission"' : '';
  return {
    code: 'rows_apart',
    row: row.row,
    column: '',
    found,
    expected: `together with ${rows}`,
    message: `Row ${row.row} (${found}) belongs to ${rows}; rows of another submission stand between. Sort the file by ${marks.join(', ')}${orMark}.`,
  };
}

/** A row of another number of cells than its header. */
export const misshapen = (row: number, found: number, expected: number): RowFault => ({
  code: 'row_width',
  row,
  column: '',
  found: `${found} cells`,
  expected: `${expected} cells`,
  message:
    'The row has another number of cells than the header, so that it cannot be told to which submission it belongs. Look for a missing or extra separator.',
});

/** More submissions than one file may hold. */
export const tooMany = (row: number): UnreadableFile =>
  new UnreadableFile({
    code: 'too_many_submissions',
    row,
    column: '',
    found: `more than ${MOST_SUBMISSIONS} submissions`,
    expected: `at most ${MOST_SUBMISSIONS}`,
    message: 'The file holds too many submissions. Split it and send the parts.',
  });

/** So many rows of another width than the first that the file is not read further. */
export const tooManyWidths = (row: number, unlike: number): UnreadableFile =>
  new UnreadableFile({
    code: 'row_width',
    row,
    column: '',
    found: `${unlike} rows of another number of cells than the first`,
    expected: 'as many cells in each row as in the header',
    message: `Up to line ${row} there are ${unlike} rows with another number of cells than the first; the rest was not read. Look for a missing or extra separator, or for lines that are no rows of readings.`,
  });

/** A text that does not come to the end of its first line. */
export const withoutHeader = (length: number): UnreadableFile =>
  new UnreadableFile({
    code: 'file_not_csv',
    row: 1,
    column: '',
    found: `${length} characters and no header line among them`,
    expected: `a header of at most ${LONGEST_RECORD} characters, and rows below it`,
    message: `The file begins with more than ${LONGEST_RECORD} characters without a header line. Save it as CSV with a line for each row.`,
  });

/**
 * Where and why a text is not CSV.
 * @param linesAbove lines of the file before the text that was parsed
 */
export function notCsv(error: CsvError, linesAbove = 0): RowFault {
  const row = linesAbove + Number(error.lines ?? 0);
  const isTooLong = error.code === 'CSV_MAX_RECORD_SIZE';
  const found = isTooLong ? `a row of more than ${LONGEST_RECORD} characters` : 'a quotation mark out of its place, or never closed';
  return {
    code: 'file_not_csv',
    row,
    column: '',
    found,
    expected: 'CSV as in RFC 4180',
    message: `The file is not CSV up to line ${row}: found ${found}. Look for an unmatched quotation mark at or before that line.`,
  };
}

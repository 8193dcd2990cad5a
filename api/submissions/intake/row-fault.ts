import type { InputFault } from '../../platform/errors/problem.js';

/** What is wrong at one place of a file. */
export interface RowFault {
  readonly code: RowFaultCode;
  /** Line of the file; the header is line 1. 0 for the file as a whole. */
  readonly row: number;
  readonly column: string;
  readonly found: string;
  readonly expected: string;
  readonly message: string;
}

export type RowFaultCode =
  | 'file_too_large'
  | 'file_not_utf8'
  | 'file_not_csv'
  | 'file_is_workbook'
  | 'file_empty'
  | 'too_many_submissions'
  | 'column_missing'
  | 'column_unknown'
  | 'column_twice'
  | 'unit_missing'
  | 'unit_unknown'
  | 'row_width'
  | 'row_differs'
  | 'rows_apart'
  | 'row_not_valid';

/** A file that cannot be read further, told as a fault. */
export class UnreadableFile extends Error {
  constructor(readonly fault: RowFault) {
    super(fault.message);
  }
}

/** A place of a file as the API points to it. */
export const pointerTo = (row: number, column: string): string =>
  `/rows/${row}${column === '' ? '' : `/${column.replaceAll('~', '~0').replaceAll('/', '~1')}`}`;

/** A fault of a file as the API tells it. */
export const toFault = ({ code, row, column, found, expected, message }: RowFault): InputFault => ({
  pointer: row === 0 ? '' : pointerTo(row, column),
  code,
  detail: message,
  row,
  column,
  found,
  expected,
});

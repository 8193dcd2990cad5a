/** What is wrong at one place of a file. */
export interface RowFault {
  /** Line of the file; the header is line 1. 0 for the file as a whole. */
  readonly row: number;
  readonly column: string;
  readonly found: string;
  readonly expected: string;
  readonly message: string;
}

export const rowFault = (row: number, column: string, found: string, expected: string, message: string): RowFault => ({
  row,
  column,
  found,
  expected,
  message,
});

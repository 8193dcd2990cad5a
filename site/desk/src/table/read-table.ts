/** A table that was dropped, chosen or pasted, as cells of text. The readers are fetched only then. */
import { LARGEST_FILE_BYTES, sizeWords } from '../../../../api/contract/body-sizes.js';

export interface Table {
  readonly name: string;
  readonly cells: readonly (readonly string[])[];
  /** A workbook keeps numbers, not what a display showed: zeros at the end are gone. */
  readonly isWorkbook: boolean;
}

const ZIP = [0x50, 0x4b, 0x03, 0x04];
const SEPARATORS = ['\t', ';', ','] as const;

/** By its first bytes; many things are called .xlsx. */
export async function isWorkbook(file: File): Promise<boolean> {
  const head = new Uint8Array(await file.slice(0, ZIP.length).arrayBuffer());
  return ZIP.every((byte, index) => head[index] === byte);
}

/** @throws Error in words when the file cannot be read as a table */
export async function readTable(file: File): Promise<Table> {
  const isZip = await isWorkbook(file);
  if (file.size > LARGEST_FILE_BYTES)
    throw new Error(
      `${file.name} has ${sizeWords(file.size)}; expected at most ${sizeWords(LARGEST_FILE_BYTES)}. Split it and take the parts.`,
    );
  try {
    const cells = isZip ? await cellsOfWorkbook(file) : await cellsOfText(await file.text());
    return { name: file.name, cells, isWorkbook: isZip };
  } catch (error) {
    if (error instanceof Error && error.name === 'TooLarge')
      throw new Error(`${file.name} ${error.message}. Copy the readings alone into a new workbook, or save them as CSV.`, { cause: error });
    const found = isZip
      ? 'begins as a workbook (.xlsx) and is broken off, damaged or another kind of zip file'
      : 'has a quotation mark that is opened and never closed';
    throw new Error(`${file.name} ${found}; expected a workbook or CSV. Save it again in the spreadsheet and take that file.`, {
      cause: error,
    });
  }
}

/** Cells of copied or written text: tabs, semicolons or commas between them, whichever the first lines have most of. */
export async function cellsOfText(text: string): Promise<string[][]> {
  const { parse } = await import('csv-parse/browser/esm/sync');
  return parse(text, {
    bom: true,
    delimiter: separatorOf(text),
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    trim: true,
  });
}

function separatorOf(text: string): string {
  const lines = text.split('\n', 10);
  const counts = SEPARATORS.map((separator) => Math.max(...lines.map((line) => line.split(separator).length)));
  // A comma beside tabs or semicolons may be a decimal comma.
  return SEPARATORS.find((_, index) => (counts[index] ?? 0) > 1) ?? ',';
}

async function cellsOfWorkbook(file: File): Promise<string[][]> {
  const { unpackWorkbook, TooLarge } = await import('./unpack-workbook.js');
  const { readSheet } = await import('read-excel-file/universal');
  const rows = await readSheet(unpackWorkbook(new Uint8Array(await file.arrayBuffer())));
  const cells = rows.map((row) =>
    row.map((cell) => (cell instanceof Date ? cell.toISOString().slice(0, 10) : cell === null ? '' : String(cell))),
  );
  // One long text can stand in every cell.
  const length = cells.reduce((sum, row) => row.reduce((inRow, cell) => inRow + cell.length, sum), 0);
  if (length > LARGEST_FILE_BYTES)
    throw new TooLarge(`has ${sizeWords(length)} of text; expected at most ${sizeWords(LARGEST_FILE_BYTES)}`);
  return cells;
}

/** The same cells as CSV with semicolons, which leave a comma to be a decimal one. */
export async function toCsv(cells: Table['cells']): Promise<string> {
  const { stringify } = await import('csv-stringify/browser/esm/sync');
  return stringify(
    cells.map((row) => [...row]),
    { delimiter: ';' },
  );
}

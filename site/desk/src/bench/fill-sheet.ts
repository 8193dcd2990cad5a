/** What keys, pasting and buttons do to a sheet. Pure. */
import type { ReadingRole } from '../../../../api/contract/submission-content.js';
import type { Column } from './method-columns.js';
import { cellOf, isEmpty, nextRow, withCell } from './sheet.js';
import type { Row, Sheet } from './sheet.js';
import { readTyped } from './typed-reading.js';

export const unitOf = (sheet: Sheet, column: Column): string => sheet.units[column.role] ?? column.units[0] ?? '';

/** A sheet whose last row is always an empty one. */
export function withRoom(sheet: Sheet): Sheet {
  const last = sheet.rows.at(-1);
  return last && Object.keys(last.cells).length === 0 ? sheet : { ...sheet, rows: [...sheet.rows, nextRow(sheet.rows)] };
}

/** Takes what stands in a cell where nothing has to be asked; the sheet as it was where something has. */
export function taken(sheet: Sheet, index: number, column: Column): Sheet {
  const row = sheet.rows[index];
  if (!row) return sheet;
  const typed = readTyped(cellOf(row, column.role).text, column.role, unitOf(sheet, column));
  return typed.is === 'number' && cellOf(row, column.role).unit === ''
    ? withCell(sheet, index, column.role, { text: typed.value, unit: typed.unit })
    : sheet;
}

/** Fills rows downwards and columns to the right with what was copied elsewhere. */
export function pasted(sheet: Sheet, index: number, columns: readonly Column[], cells: readonly (readonly string[])[]): Sheet {
  return cells.reduce((filled, line, down) => {
    const withRows = filled.rows.length > index + down ? filled : { ...filled, rows: [...filled.rows, nextRow(filled.rows)] };
    return line.reduce((done, text, right) => {
      const column = columns[right];
      return column && text !== '' ? taken(withCell(done, index + down, column.role, { text, unit: '' }), index + down, column) : done;
    }, withRows);
  }, sheet);
}

/** The unit of a column where nothing is read in another yet; a question for each cell otherwise. */
export const withUnits = (sheet: Sheet, units: Sheet['units']): Sheet => ({
  ...sheet,
  units: {
    ...sheet.units,
    ...Object.fromEntries(
      Object.entries(units).filter(([role]) => sheet.rows.every((row) => cellOf(row, role as ReadingRole).text === '')),
    ),
  },
});

/** Where a file or a record goes on: the first row of which nothing is typed. */
export const firstEmpty = (rows: readonly Row[]): number => {
  const found = rows.findIndex(isEmpty);
  return found === -1 ? rows.length : found;
};

/** Cells that are typed and still to be looked at. */
export const untaken = (rows: readonly Row[], roles: readonly ReadingRole[]): readonly number[] =>
  rows.flatMap((row) => (roles.some((role) => cellOf(row, role).text !== '' && cellOf(row, role).unit === '') ? [row.number] : []));

import { stringify } from 'csv-stringify/sync';
import type { ReleaseFile } from '../release-files.js';
import type { Table } from './table.js';

export const csvPath = ({ name }: Pick<Table, 'name'>): string => `csv/${name}.csv`;

/** RFC 4180 with a header; a cell that a spreadsheet would take for a formula is neutralised. */
export const csvFile = (table: Table): ReleaseFile => ({
  path: csvPath(table),
  mediaType: 'text/csv; charset=utf-8',
  content: stringify([...table.rows], {
    header: true,
    columns: table.columns.map(({ name }) => name),
    escape_formulas: true,
    record_delimiter: 'windows',
  }),
});

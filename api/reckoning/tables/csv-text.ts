import { stringify } from 'csv-stringify/sync';
import type { FileInParts } from '../release-files.js';
import type { Table } from './table.js';

/** A table as a text that grows: RFC 4180 with a header; a cell that a spreadsheet would take for a formula is neutralised. */
export class CsvText {
  readonly table: Omit<Table, 'rows'>;
  readonly path: string;
  private readonly parts: string[];

  constructor({ rows, ...table }: Table) {
    this.table = table;
    this.path = `csv/${table.name}.csv`;
    this.parts = [this.textOf(rows, true)];
  }

  add(rows: Table['rows']): void {
    this.parts.push(this.textOf(rows, false));
  }

  file(): FileInParts {
    return { path: this.path, mediaType: 'text/csv; charset=utf-8', parts: this.parts };
  }

  private textOf(rows: Table['rows'], header: boolean): string {
    const columns = this.table.columns.map(({ name }) => name);
    return stringify([...rows], { header, columns, escape_formulas: true, record_delimiter: 'windows' });
  }
}

import type { Header } from './read-header.js';

/** One row of the file, read by the names of its columns. */
export class FileRow {
  constructor(
    readonly row: number,
    private readonly cells: readonly string[],
    private readonly header: Header,
    private readonly hasDecimalComma: boolean,
  ) {}

  /** Text of a cell; empty where the file has no such column. */
  text(name: string): string {
    const index = this.header.fields.get(name)?.index;
    return index === undefined ? '' : (this.cells[index] ?? '');
  }

  /** A decimal comma is understood only where no comma separates the cells. */
  decimal(name: string): string {
    const text = this.text(name);
    return this.hasDecimalComma && /^-?\d+,\d+$/.test(text) ? text.replace(',', '.') : text;
  }

  /** Unit of a quantity, from the header or from its own column. */
  unitOf(name: string): string {
    const index = this.header.unitFields.get(name)?.index;
    return this.header.fields.get(name)?.unit ?? (index === undefined ? '' : (this.cells[index] ?? ''));
  }

  /** Whole number above zero, or null. */
  wholeNumber(name: string): number | null {
    const text = this.text(name);
    return /^\d{1,9}$/.test(text) && Number(text) > 0 ? Number(text) : null;
  }

  /** The column as its header writes it. */
  columnOf(name: string): string {
    return this.header.fields.get(name)?.title ?? name;
  }

  /** The column that gives the unit of a quantity. */
  unitColumnOf(name: string): string {
    return this.header.unitFields.get(name)?.title ?? this.columnOf(name);
  }
}

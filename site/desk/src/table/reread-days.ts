/** Days as spreadsheets of many countries write them, read as somebody says they are meant. Pure. */
import type { Table } from './read-table.js';

export type DayOrder = 'dayFirst' | 'monthFirst';

const WRITTEN = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/;

/** Columns whose cells below the header are days written another way than 2026-01-17, with the first of them. */
export function foreignDays(cells: Table['cells']): { readonly columns: readonly number[]; readonly first: string } {
  const columns = (cells[0] ?? []).flatMap((title, index) =>
    /\bday\b|\bdate\b/i.test(title) && cells.slice(1).some((row) => WRITTEN.test(row[index] ?? '')) ? [index] : [],
  );
  const first = cells
    .slice(1)
    .flatMap((row) => columns.map((index) => row[index] ?? ''))
    .find((cell) => WRITTEN.test(cell));
  return { columns, first: first ?? '' };
}

/** 3.4.2026 → 2026-04-03 with the day first; null where there is no such day. */
export function dayAs(written: string, order: DayOrder): string | null {
  const [, one = '', two = '', year = ''] = WRITTEN.exec(written) ?? [];
  const [day, month] = order === 'dayFirst' ? [one, two] : [two, one];
  const iso = `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const date = new Date(`${iso}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(iso) ? iso : null;
}

/** The table with the days of these columns as ISO 8601 has them; what is no such day stays as it is. */
export const withDays = (cells: Table['cells'], columns: readonly number[], order: DayOrder): string[][] =>
  cells.map((row, line) => row.map((cell, index) => (line > 0 && columns.includes(index) ? (dayAs(cell, order) ?? cell) : cell)));

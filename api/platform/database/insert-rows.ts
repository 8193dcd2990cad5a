import type { Transaction } from './scope.js';
import { copyingOf } from './copying.js';

/** Rows of one table in the words of COPY, ready to be sent or to wait on disk. */
export interface TableRows {
  readonly statement: string;
  readonly bytes: Uint8Array;
}

/**
 * Puts rows of a table into words.
 * @param table name in the database
 * @param rows columns in camelCase → plain values, the same columns in each row; a column that is left out gets its default, and one that
 * holds an object is JSON
 */
export function tableRows(table: string, rows: readonly Readonly<Record<string, unknown>>[]): TableRows {
  const columns = Object.keys(rows[0] ?? {});
  const statement = `COPY "${table}" (${columns.map((name) => `"${toSnakeCase(name)}"`).join(', ')}) FROM STDIN`;
  let text = '';
  for (const row of rows) {
    let separator = '';
    for (const column of columns) {
      text += separator + cellOf(row[column]);
      separator = '\t';
    }
    text += '\n';
  }
  return { statement, bytes: Buffer.from(text) };
}

/** Inserts rows, however many, in one statement: COPY takes them in a fraction of the time of a statement with a parameter a cell. */
export async function insertRows(tx: Transaction, { statement, bytes }: TableRows): Promise<void> {
  if (bytes.length > 0) await copyingOf(tx)(statement, bytes);
}

/** @see https://www.postgresql.org/docs/18/sql-copy.html, text format */
function cellOf(value: unknown): string {
  if (value === null || value === undefined) return String.raw`\N`;
  if (typeof value === 'string') return escaped(value);
  if (value instanceof Date) return value.toISOString();
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  return escaped(JSON.stringify(value));
}

const ESCAPES: Readonly<Record<string, string>> = {
  '\\': String.raw`\\`,
  '\t': String.raw`\t`,
  '\n': String.raw`\n`,
  '\r': String.raw`\r`,
};
const escaped = (text: string): string =>
  /[\\\t\n\r]/.test(text) ? text.replaceAll(/[\\\t\n\r]/g, (sign) => ESCAPES[sign] ?? sign) : text;

const toSnakeCase = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

import type { Transaction } from './database.js';

/**
 * Inserts rows in one statement, however many they are. They travel as one JSON text: a statement with a parameter a cell takes several
 * times as long.
 * @param table name in the database
 * @param rows columns in camelCase → plain JSON values, the same columns in each row; a column that is left out gets its default
 */
export async function insertRows(tx: Transaction, table: string, rows: readonly Readonly<Record<string, unknown>>[]): Promise<void> {
  const [first] = rows;
  if (!first) return;
  const columns = Object.keys(first).map((key) => ({ key, name: toSnakeCase(key) }));
  const named = columns.map(({ name }) => `"${name}"`).join(', ');
  await tx.$executeRawUnsafe(
    `INSERT INTO "${table}" (${named}) SELECT ${named} FROM json_populate_recordset(NULL::"${table}", $1::json)`,
    JSON.stringify(rows.map((row) => Object.fromEntries(columns.map(({ key, name }) => [name, row[key]])))),
  );
}

const toSnakeCase = (name: string): string => name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

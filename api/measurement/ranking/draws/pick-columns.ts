/**
 * Takes some entries out of draws of all.
 *
 * Formula: columns of a B·n table, row by row
 * @param table B·n numbers, draw by draw
 * @param n entries in the table [1]
 * @param columns positions of those to take, in the order wanted
 * @returns B·columns numbers, draw by draw; the table itself when all are taken in their order
 * @throws nothing: the caller checks the positions
 * @see COMMON-PRACTICE
 * @example pickColumns(Float64Array.of(1, 2, 3, 4), 2, [1]) // [2, 4]
 */
export function pickColumns<T extends Float64Array | Uint16Array>(table: T, n: number, columns: readonly number[]): T {
  if (columns.length === n && columns.every((column, i) => column === i)) return table;
  const draws = n === 0 ? 0 : table.length / n;
  const picked = (table instanceof Float64Array ? new Float64Array(draws * columns.length) : new Uint16Array(draws * columns.length)) as T;
  let at = 0;
  for (let draw = 0; draw < draws; draw++) for (const column of columns) picked[at++] = table[draw * n + column]!;
  return picked;
}

/** Rows in published order, cut where the group changes: what cannot be told apart stands together. */
export function byGroup<Row extends { group: number | null }>(rows: readonly Row[]): { group: number | null; rows: Row[] }[] {
  const groups: { group: number | null; rows: Row[] }[] = [];
  for (const row of rows) {
    const last = groups.at(-1);
    if (last?.group === row.group) last.rows.push(row);
    else groups.push({ group: row.group, rows: [row] });
  }
  return groups;
}

/** Neighbours of one group; a group whose rows others stand between comes in several runs. */
export interface Run<Row> {
  group: number | null;
  rows: Row[];
  /** How many rows the group has in all. */
  count: number;
  isContinued: boolean;
}

/** Rows in published order, cut where the group changes: what cannot be told apart stands together. */
export function byGroup<Row extends { group: number | null }>(rows: readonly Row[]): Run<Row>[] {
  const counts = Map.groupBy(rows, ({ group }) => group);
  const runs: Run<Row>[] = [];
  for (const row of rows) {
    const { group } = row;
    const last = runs.at(-1);
    if (last?.group === group) last.rows.push(row);
    else runs.push({ group, rows: [row], count: counts.get(group)?.length ?? 0, isContinued: runs.some((run) => run.group === group) });
  }
  return runs;
}

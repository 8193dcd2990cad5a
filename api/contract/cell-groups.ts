/** What a published cell is about, in the order in which readers care. */
export const CELL_GROUPS = ['places', 'values', 'intervals', 'chances', 'movement', 'claims', 'evidence'] as const;
export type CellGroup = (typeof CELL_GROUPS)[number];

import type { PageQuery } from '../contract/endpoints/catalogue.js';

/** Key of a page's first row for a query: rows after the cursor, one more than are shown, so that the last page is known. */
export const after = <K extends string>(key: K, { limit, cursor }: PageQuery) => ({
  where: (cursor === undefined ? {} : { [key]: { gt: cursor } }) as { [P in K]?: { gt: string } },
  orderBy: { [key]: 'asc' } as { [P in K]: 'asc' },
  take: limit + 1,
});

/** Cuts the extra row off and says where the next page starts. */
export function toPage<R, I>(
  rows: readonly R[],
  limit: number,
  keyOf: (row: R) => string,
  toItem: (row: R) => I,
): { items: I[]; nextCursor: string | null } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return { items: shown.map(toItem), nextCursor: rows.length > limit && last !== undefined ? keyOf(last) : null };
}

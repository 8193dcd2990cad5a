/** How a spool came to the house. */
export const SPOOL_SOURCES = ['bought', 'makerSupplied', 'lent'] as const;
export type SpoolSource = (typeof SPOOL_SOURCES)[number];

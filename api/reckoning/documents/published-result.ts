import { z } from 'zod';

/** A result as the bundle keeps it: enough to compare editions and to recompute intervals. */
export const publishedResultSchema = z.strictObject({
  variant: z.string(),
  quantity: z.string(),
  value: z.string(),
  standardUncertainty: z.string().nullable(),
  degreesOfFreedom: z.string().nullable(),
  /** Relative, without what is common to the whole table; not told by the first releases. */
  besideTable: z.strictObject({ standardUncertainty: z.string(), degreesOfFreedom: z.string() }).nullable().optional(),
});

export type PublishedResult = z.infer<typeof publishedResultSchema>;

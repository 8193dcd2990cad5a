import { z } from 'zod';
import { releaseSummarySchema, signingKeySchema } from '../documents/release-documents.js';

export const releasesResponse = z.strictObject({ items: z.array(releaseSummarySchema), nextCursor: z.string().nullable() });

export const signingKeysResponse = z.strictObject({ items: z.array(signingKeySchema), nextCursor: z.string().nullable() });

/** Filters of a category's standings; each narrows the rows, places stay as published. */
export const standingsQuery = z.strictObject({
  maker: z.string().optional().describe('Slug of a maker'),
  material: z.string().optional().describe('Material'),
  construction: z.string().optional().describe('Construction'),
  carriers: z.coerce.number().int().optional().describe('Ends braided'),
  peNumber: z.string().optional().describe('PE number on the label'),
});
export type StandingsQuery = z.infer<typeof standingsQuery>;

export const problemsResponse = z.strictObject({
  items: z.array(z.strictObject({ code: z.string(), status: z.int(), title: z.string(), explains: z.string() })),
  nextCursor: z.string().nullable(),
});

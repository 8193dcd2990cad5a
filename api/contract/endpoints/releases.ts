import { z } from 'zod';
import { orderStateSchema } from '../order-state.js';
import { erratumSchema } from '../documents/release-documents.js';

export const releaseRequest = z.strictObject({
  erratum: z
    .strictObject({
      reasonCode: erratumSchema.shape.reasonCode,
      words: z.string().trim().min(1).max(2000).describe('What changed and why, for readers'),
      expects: z
        .array(
          z.strictObject({
            where: z.string().max(200).describe('Cell, as an erratum names it: "overall, <variant>, place"'),
            before: z.string().max(200).describe('What readers see there now'),
          }),
        )
        .min(1)
        .max(100)
        .describe('What the correction takes for published now; if any of it is no longer so, nothing is published'),
    })
    .nullable()
    .default(null)
    .describe('Needed from the second revision on'),
  publishAt: z.iso.datetime().nullable().default(null).describe('When readers see it, UTC; null: as soon as it is built'),
});
/** Of a release in an address. */
export const releaseParameter = z.coerce.number().int().min(1).max(999_999).describe('Number of the revision, from 1');

export const releaseStateResponse = z.strictObject({
  edition: z.string(),
  revision: z.int(),
  state: z.enum(['building', 'published', 'superseded']),
  digest: z.string().nullable(),
  publishAt: z.iso.datetime().nullable().describe('When it is to be published; null: as soon as it is built'),
  order: orderStateSchema.nullable().describe('How far the worker is with it; null for one of long ago'),
});
export type ReleaseRequest = z.infer<typeof releaseRequest>;

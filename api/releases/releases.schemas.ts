import { z } from 'zod';
import { erratumSchema } from '../public-api/release-documents.schemas.js';

export const releaseRequest = z.strictObject({
  erratum: z
    .strictObject({
      reasonCode: erratumSchema.shape.reasonCode,
      words: z.string().trim().min(1).max(2000).describe('What changed and why, for readers'),
    })
    .nullable()
    .default(null)
    .describe('Needed from the second revision on'),
});
export const releaseStateResponse = z.strictObject({
  edition: z.string(),
  revision: z.int(),
  state: z.enum(['building', 'published', 'superseded']),
  digest: z.string().nullable(),
});
export type ReleaseRequest = z.infer<typeof releaseRequest>;

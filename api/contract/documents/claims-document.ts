/** What the labels of an edition say, beside what was measured. */
import { z } from 'zod';
import { heading, publishedClaimSchema, variantNameSchema } from './release-documents.js';

export const claimsDocumentSchema = z
  .strictObject({
    ...heading,
    items: z
      .array(z.strictObject({ variant: variantNameSchema, claims: z.array(publishedClaimSchema) }))
      .describe('By slug of the variant'),
  })
  .describe('Label claims of an edition beside measured values, with decisions');

export type ClaimsDocument = z.infer<typeof claimsDocumentSchema>;

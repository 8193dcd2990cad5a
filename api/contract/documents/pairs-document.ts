import { z } from 'zod';
import { heading, slug } from './published-fields.js';

export const pairsDocumentSchema = z
  .strictObject({
    ...heading,
    variants: z.array(slug).describe('Placed variants, best first; empty where no chances are stated'),
    aheadPercent: z
      .array(z.array(z.int().min(0).max(100)))
      .describe('Chance that the variant of the row is ahead of that of the column overall, whole per cent; a shared place counts half'),
  })
  .describe('Chances of every pair under the model');

export type PairsDocument = z.infer<typeof pairsDocumentSchema>;

import { z } from 'zod';
import { traceSchema } from '../documents/trace.js';

export const tracesResponse = z.strictObject({
  items: z.array(z.strictObject({ specimen: z.int().describe('Number of the specimen'), ...traceSchema.shape })).describe('By specimen'),
  nextCursor: z.null(),
});
export const addTracesQuery = z.strictObject({
  specimen: z.coerce
    .number()
    .int()
    .min(1)
    .optional()
    .describe('Specimen that the file is of; leave it out where the file has a column of specimens'),
});
export const specimenParameter = z.coerce.number().int().min(1).describe('Number of the specimen');

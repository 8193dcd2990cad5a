import { z } from 'zod';
import { date, heading, slug } from './published-fields.js';

export const withdrawnSchema = z
  .strictObject({
    reference: z.string().describe('Reference of the submission'),
    variant: slug,
    method: slug,
    tester: z.string().describe('Display name of the tester'),
    benchDay: date,
    withdrawnOn: date.describe('When it left the results'),
    reason: z.string().describe('Why'),
    citation: z.string().describe('How to cite that it was withdrawn'),
  })
  .describe('A result that was accepted and withdrawn: it counts for nothing, and is not forgotten');

export const withdrawnDocumentSchema = z
  .strictObject({ ...heading, items: z.array(withdrawnSchema).describe('By reference') })
  .describe('Results of the edition that were withdrawn');

export type Withdrawn = z.infer<typeof withdrawnSchema>;
export type WithdrawnDocument = z.infer<typeof withdrawnDocumentSchema>;

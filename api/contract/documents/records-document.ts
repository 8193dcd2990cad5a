import { z } from 'zod';
import { decimal, heading, slug } from './published-fields.js';

export const recordsDocumentSchema = z
  .strictObject({
    ...heading,
    records: z
      .array(
        z.strictObject({
          category: slug,
          strengthFromN: z.int().describe('Class of measured breaking force, from this on [N]'),
          strengthBelowN: z.int().nullable().describe('And below this [N]; null without an end'),
          value: decimal.describe('Best value ever published'),
          unit: z.string().describe('SI unit'),
          variant: slug,
          edition: slug,
          equalled: z.array(z.strictObject({ variant: slug, edition: slug })).describe('Later results of the same printed value'),
          isNew: z.boolean().describe('Set in this edition'),
          since: slug.describe('First edition that compares: the method last changed beyond comparison before it'),
        }),
      )
      .describe('By category and class of strength'),
    runs: z
      .array(
        z.strictObject({
          table: slug.describe('"overall" or a category'),
          variant: slug,
          editions: z.array(slug).describe('Editions in a row in first place, oldest first'),
          isGoingOn: z.boolean().describe('Still there in this edition'),
        }),
      )
      .describe('Runs at the top, longest first in each table'),
  })
  .describe('What stands over the years, as known when this edition was published');

export type RecordsDocument = z.infer<typeof recordsDocumentSchema>;

import { z } from 'zod';
import { decimal, heading, slug } from './published-fields.js';

export const sensitivitySchema = z
  .strictObject({
    leftOut: z
      .array(
        z.strictObject({
          kind: z.enum(['category', 'tester', 'rig', 'entry']).describe('What is left out'),
          name: z.string().describe('Code, display name or slug of what is left out'),
          first: z.array(slug).describe('Variants in first place then'),
          swappedPairs: z.int().describe('Pairs of variants whose order turns round'),
          swaps: z.array(z.strictObject({ ahead: slug, behind: slug })).describe('The first of these pairs: who is then ahead of whom'),
          dropped: z.array(slug).describe('Variants that are then no longer placed'),
        }),
      )
      .describe(
        'The overall order without each category, tester and rig, and without those entries that turn most pairs round; documents/sensitivity.json of the release has every entry, and more of the pairs',
      ),
    weights: z
      .strictObject({
        firstPlaces: z
          .array(z.strictObject({ variant: slug, percent: decimal }))
          .describe('Share of all weights, drawn evenly, under which a variant is first'),
        smallestChange: z
          .strictObject({ variant: slug, weightMovedPercent: decimal })
          .nullable()
          .describe('Smallest part of the weight that, moved to other categories, brings another variant to the first score'),
      })
      .nullable()
      .describe('What first place owes to the weights; null where the scheme knows none'),
  })
  .describe('What the overall order hangs on');

export const sensitivityDocumentSchema = z
  .strictObject({ ...heading, sensitivity: sensitivitySchema.nullable().describe('Null where an uncertainty is not known') })
  .describe('What the overall order hangs on: the order without each entry that turns a pair round, too');

export type SensitivityDocument = z.infer<typeof sensitivityDocumentSchema>;

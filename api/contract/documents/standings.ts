/** Rows of the tables of an edition. */
import { z } from 'zod';
import { figureSchema } from './figure.js';
import { decimal } from './published-fields.js';
import { variantNameSchema } from './variant-name.js';

export const movementSchema = z
  .strictObject({
    kind: z.enum(['moved', 'unchanged', 'new', 'returned', 'notComparable']).describe('Against the edition before'),
    places: z.int().nullable().describe('Places gained (positive) or lost (negative)'),
    runAtTop: z.int().describe('Editions in a row in first place, this one included'),
  })
  .describe('Movement against the edition before');

export const placeIntervalSchema = z
  .strictObject({ low: z.int(), high: z.int() })
  .describe('Places that the evidence allows, simultaneous over the table at 95 %');

const placed = {
  variant: variantNameSchema,
  place: z.int().nullable().describe('Competition place (1-2-2-4); null when not placed'),
  placeIfIncluded: z.int().nullable().describe('Place it would have had, shown in brackets, for a row shown unplaced'),
  isTied: z.boolean().describe('Shares its place with another'),
  group: z.int().nullable().describe('Too-close-to-call group, 1 is the top group'),
  placeInterval: placeIntervalSchema.nullable(),
  couldBeFirst: z
    .boolean()
    .nullable()
    .optional()
    .describe('Whether it belongs to the set that holds the best of the table with 95 % (comparison with the best); not told by format 1'),
  movement: movementSchema,
  chanceOfFirstPercent: decimal.nullable().describe('Chance of being first under the model'),
  chanceOfFirstFivePercent: decimal.nullable().describe('Chance of being among the first five under the model'),
  chanceAheadOfNextPercent: decimal.nullable().describe('Chance that this row and the next placed one are in the right order'),
};

export const overallRowSchema = z
  .strictObject({
    ...placed,
    score: decimal.describe('Score under the scheme, e.g. the sum of places'),
    categoryPlaces: z.record(z.string(), z.int()).describe('Category code → place counted in the score'),
  })
  .describe('A row of the overall standings');

export const categoryRowSchema = z
  .strictObject({
    ...placed,
    figure: figureSchema,
    placeInScore: z
      .int()
      .optional()
      .describe('Place that the overall score adds up, where it is another: it counts variants that are left out as well'),
    change: z
      .strictObject({
        kind: z
          .enum(['changed', 'withinNoise', 'notComparable', 'first'])
          .describe(
            'Whether the measured value changed beyond noise; of the changes that a table names at most one in twenty is noise (Benjamini–Hochberg)',
          ),
        percent: decimal.nullable().describe('Change of the measured value against the edition before'),
      })
      .describe('Change of the measured value'),
  })
  .describe('A row of a category');

export type Movement = z.infer<typeof movementSchema>;
export type OverallRow = z.infer<typeof overallRowSchema>;
export type CategoryRow = z.infer<typeof categoryRowSchema>;

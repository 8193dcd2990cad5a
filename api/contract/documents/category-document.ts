import { z } from 'zod';
import { decimal, heading, quantity, quantityName, slug } from './published-fields.js';
import { categoryRowSchema } from './standings.js';

export const categorySchema = z
  .strictObject({
    code: slug,
    name: z.string().describe('Name on the page'),
    quantity,
    quantityName,
    unit: z.string().describe('SI unit'),
    tradeUnit: z.string().nullable().describe('Trade unit'),
    direction: z.enum(['more', 'less']).describe('Whether more or less is better'),
    weight: decimal.describe('Weight in the scheme'),
    method: slug.describe('Method'),
    methodVersion: z.int().describe('Version of the method'),
    series: slug.optional().describe('Series of the method; not told by format 1'),
    section: z
      .strictObject({ method: slug, series: slug })
      .nullable()
      .optional()
      .describe('Method and series of the diameters that a stress is taken over; null of other quantities, not told by format 1'),
    conditions: z.string().describe('Conditions that define the category'),
    unplaced: z
      .enum(['nothingKnownOfEffects', 'nothingKnownOfScatter'])
      .optional()
      .describe(
        'Why its rows have values and no places, and the overall score leaves it out: too few lines were pulled twice, and neither the method nor an edition before, a round robin or control pulls tell what rigs and testers differ by; or nothing tells how readings scatter, as where one specimen each was measured; absent where there are places',
      ),
    comparability: z.enum(['same', 'changed', 'notComparable', 'first']).describe('Against the edition before'),
  })
  .describe('What is ranked');

export const categoryDocumentSchema = z
  .strictObject({
    ...heading,
    category: categorySchema,
    spread: z
      .strictObject({
        specimenPercent: decimal
          .nullable()
          .describe('What a specimen scatters by in general, coefficient of variation; null when too few tell'),
        betweenSubmissionsPercent: decimal.describe('What submissions of one variant differ by beyond that, relative standard deviation'),
        degreesOfFreedom: z.int().describe('Degrees of freedom of the latter'),
        specimensToTell: z.int().nullable().describe('Specimens of each of two variants that tell 3 % apart with a power of 80 %'),
      })
      .describe('How the readings of this category scatter'),
    rows: z.array(categoryRowSchema).describe('Standings, best first; by name where nobody has a place'),
  })
  .describe('The standings of one category');

export type Category = z.infer<typeof categorySchema>;
export type CategoryDocument = z.infer<typeof categoryDocumentSchema>;

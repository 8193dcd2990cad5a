/** What was left out of an edition, and what a later revision changed. */
import { z } from 'zod';
import { slug } from './published-fields.js';
import { variantNameSchema } from './variant-name.js';

export const exclusionSchema = z
  .strictObject({
    variant: variantNameSchema,
    reasonCode: z.enum(['notObtainable', 'labelInDoubt', 'duplicate', 'makersRequestRefused', 'interest']).describe('Why'),
    words: z.string().describe('Why, in words'),
    effect: z.enum(['closedUp', 'shownUnplaced']).describe('Whether the others move up'),
    placeIfIncluded: z.int().nullable().describe('Overall place it would have had'),
  })
  .describe('A variant left out, with the reason');

export const cellDivision = slug
  .optional()
  .describe('Division that the cell is of; absent where it is of the whole edition, and of an edition with one');

export const erratumSchema = z
  .strictObject({
    reasonCode: z.enum(['withdrawal', 'reidentification', 'methodError', 'catalogueError']).describe('Why'),
    words: z.string().describe('What changed and why'),
    expected: z
      .array(z.strictObject({ where: z.string(), before: z.string() }))
      .describe('What the correction took for published, and found'),
    changes: z
      .array(
        z.strictObject({
          where: z.string().describe('Document and row'),
          division: cellDivision,
          before: z.string().nullable(),
          after: z.string().nullable(),
        }),
      )
      .describe('Changed cells, of an edition with several divisions one division after the other'),
    consequences: z.string().describe('Computed consequences, e.g. "3 values changed, 2 places", with several divisions for each by name'),
  })
  .describe('What a later revision changed; in the document of a division what changed there alone');

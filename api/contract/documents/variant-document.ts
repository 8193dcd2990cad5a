import { z } from 'zod';
import { categorySchema } from './category-document.js';
import { exclusionSchema } from './corrections.js';
import { figureSchema, tradeValueSchema } from './figure.js';
import { date, decimal, heading, quantity, slug } from './published-fields.js';
import { publishedSubmissionSchema } from './published-submission.js';
import { categoryRowSchema, overallRowSchema } from './standings.js';
import { variantNameSchema } from './variant-name.js';
import { supersededSchema } from '../superseded.js';
import { withdrawnSchema } from './withdrawn-document.js';

export const publishedClaimSchema = z
  .strictObject({
    quantity: z.enum(['breakingForce', 'diameter', 'linearDensity', 'peNumber']).describe('Claimed quantity'),
    basis: z.enum(['average', 'minimum', 'maximum', 'class', 'notStated']).describe('Basis'),
    printed: z.strictObject({ text: z.string(), unit: z.string() }).describe('As printed'),
    value: decimal.describe('In SI'),
    shown: decimal.optional().describe('The claim to the decimals that its measurement is shown with; absent from earlier releases'),
    unit: z.string().describe('SI unit'),
    seenOn: date,
    source: z.string().describe('Where it was seen'),
    measured: figureSchema.nullable(),
    ratioPercent: decimal.nullable().describe('100 × measured / claimed'),
    decision: z
      .enum(['meets', 'probablyMeets', 'cannotSay', 'probablyFallsShort', 'fallsShort'])
      .nullable()
      .describe('Decision after JCGM 106'),
  })
  .describe('What the label says, beside what was measured');

export const historyPointSchema = z
  .strictObject({
    edition: slug,
    division: slug.optional().describe('Division that it was in; none where the edition had one'),
    revision: z.int(),
    overallPlace: z.int().nullable(),
    outcome: z.enum(['placed', 'incomplete', 'excluded']).describe('How the variant fared'),
    categories: z
      .array(
        z.strictObject({
          code: slug,
          place: z.int().nullable(),
          value: decimal,
          low: decimal.nullable(),
          high: decimal.nullable(),
          unit: z.string(),
          trade: tradeValueSchema.nullable(),
          methodVersion: z.int(),
          isBreak: z.boolean().describe('A method change breaks comparison with the point before'),
          isCorrected: z.boolean().optional().describe('An erratum of the edition changed the value; not told by the first releases'),
        }),
      )
      .describe('By category'),
  })
  .describe('One edition in the history of a variant');

export const variantDocumentSchema = z
  .strictObject({
    ...heading,
    variant: variantNameSchema,
    overruled: z.string().optional().describe('Why an editor put it into its division against the rule; none where the rule holds'),
    outcome: z.enum(['placed', 'incomplete', 'excluded']).describe('How the variant fared in this edition'),
    exclusion: exclusionSchema.omit({ variant: true }).nullable(),
    missing: z.array(slug).describe('Categories without an accepted result'),
    overall: overallRowSchema.omit({ variant: true }).nullable(),
    categories: z
      .array(z.strictObject({ category: categorySchema, row: categoryRowSchema.omit({ variant: true }) }))
      .describe('By category'),
    figures: z.array(figureSchema).describe('Every figure measured, ranked or not'),
    claims: z.array(publishedClaimSchema).describe('Claims'),
    evidence: z
      .array(z.strictObject({ quantity, submissions: z.array(z.string()).describe('References') }))
      .optional()
      .describe('Which submissions each figure was computed from'),
    submissions: z.array(publishedSubmissionSchema).describe('Accepted submissions'),
    withdrawn: z.array(withdrawnSchema).describe('Results that were withdrawn'),
    superseded: z
      .array(supersededSchema)
      .optional()
      .describe('What was put right after results of it rested on it; none where nothing was'),
    spools: z
      .array(
        z.strictObject({
          code: z.string(),
          source: z.enum(['bought', 'makerSupplied', 'lent']),
          obtainedOn: date,
          place: z.string(),
          lot: z.string().nullable(),
          reidentified: z.string().nullable(),
        }),
      )
      .describe('Spools tested and how they were obtained'),
    budgets: z
      .array(
        z.strictObject({
          category: slug,
          standardUncertaintyPercent: decimal.describe('Combined standard uncertainty, relative to the value'),
          degreesOfFreedom: z.int().nullable().describe('Effective degrees of freedom; null for more than a thousand'),
          lines: z
            .array(
              z.strictObject({
                component: z.enum(['repeatability', 'submission', 'tester', 'rig', 'certificate', 'spreads']),
                of: z.string().nullable().describe('Whose or which; null for repeatability'),
                sharePercent: decimal.describe('Share of the variance'),
              }),
            )
            .describe('Largest first'),
        }),
      )
      .describe('Uncertainty budget of each category (JCGM 100)'),
    history: z.array(historyPointSchema).describe('Editions, oldest first, this one last'),
    siblings: z.array(variantNameSchema).describe('Other variants of the line in this edition'),
  })
  .describe('One variant in one edition');

export type PublishedClaim = z.infer<typeof publishedClaimSchema>;
export type HistoryPoint = z.infer<typeof historyPointSchema>;
export type VariantDocument = z.infer<typeof variantDocumentSchema>;

import { z } from 'zod';
import { amendmentSchema } from '../amendment.js';
import { divisionRuleSchema } from '../division.js';
import { supersededSchema } from '../superseded.js';
import { categorySchema } from './category-document.js';
import { erratumSchema, exclusionSchema } from './corrections.js';
import { heading, slug } from './published-fields.js';
import { sensitivitySchema } from './sensitivity.js';
import { overallRowSchema } from './standings.js';
import { variantNameSchema } from './variant-name.js';

const countsSchema = z
  .strictObject({ entries: z.int(), submissions: z.int(), specimens: z.int(), testers: z.int(), rigs: z.int(), setAside: z.int() })
  .describe('Evidence behind it');

const amendmentsSchema = z
  .array(amendmentSchema)
  .optional()
  .describe('What it took besides while it was open, with the reason; none where it took nothing');

/**
 * The tables of what may be compared: of an edition with one division the edition itself (`documents/edition.json`), else one of its
 * divisions (`documents/divisions/{division}/edition.json`), with `division`, `takes` and `overruled`.
 */
export const editionDocumentSchema = z
  .strictObject({
    ...heading,
    takes: divisionRuleSchema.optional(),
    overruled: z
      .array(z.strictObject({ variant: slug, reason: z.string().describe('Why, in the words of the editor') }))
      .optional()
      .describe('Entries that an editor put into this division against the rule; none where there is one division'),
    previousEdition: slug.nullable(),
    scheme: z
      .strictObject({
        slug,
        name: z.string().describe('Name'),
        version: z.int().describe('Version'),
        words: z.string().describe('The scheme in words'),
        combine: z.enum(['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins']).describe('How places are combined'),
        countPlaces: z.enum(['beforeExclusions', 'afterExclusions']).describe('When category places are counted'),
        tieBreak: z.enum(['none', 'mostFirsts']).describe('Tie-break'),
        categories: z.array(categorySchema).describe('Categories in order'),
      })
      .describe('Scheme'),
    counts: countsSchema,
    overall: z.array(overallRowSchema).describe('Overall standings, best first'),
    incomplete: z
      .array(
        z.strictObject({
          variant: variantNameSchema,
          missing: z.array(slug).describe('Categories without a result that counts'),
          needs: z.array(z.string()).describe('What it lacks, in words'),
        }),
      )
      .describe('Entries not placed overall'),
    excluded: z.array(exclusionSchema).describe('Entries left out'),
    amendments: amendmentsSchema,
    superseded: z.array(supersededSchema).optional().describe('What was put right after results rested on it; none where nothing was'),
    categoryTops: z.array(z.strictObject({ category: slug, variants: z.array(variantNameSchema) })).describe('Top group of each category'),
    sensitivity: sensitivitySchema.nullable().describe('Null where an uncertainty is not known'),
    erratum: erratumSchema.nullable(),
  })
  .describe('An edition as published');

/** `documents/edition.json` of an edition with several divisions: what they are, and what holds for all. Their tables have documents of their own. */
export const editionOfDivisionsSchema = z
  .strictObject({
    ...heading,
    previousEdition: slug.nullable(),
    divisions: z
      .array(
        z.strictObject({
          slug,
          name: z.string().describe('Name of the division'),
          takes: divisionRuleSchema,
          variants: z.array(slug).describe('Its entries, placed or not, by slug'),
        }),
      )
      .min(2)
      .describe('Divisions in the order of the editor; places never run across them'),
    counts: countsSchema,
    amendments: amendmentsSchema,
    erratum: erratumSchema.nullable(),
  })
  .describe('An edition with several divisions, as published');

/** What lies at `documents/edition.json`: the tables of the one division, or the list of several. */
export const editionFileSchema = z.union([editionOfDivisionsSchema, editionDocumentSchema]);

export type EditionDocument = z.infer<typeof editionDocumentSchema>;
export type EditionOfDivisions = z.infer<typeof editionOfDivisionsSchema>;

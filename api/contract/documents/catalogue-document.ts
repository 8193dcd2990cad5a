import { z } from 'zod';
import { decimal, heading, slug } from './published-fields.js';
import { variantNameSchema } from './variant-name.js';

export const checkDocumentSchema = z
  .strictObject({
    code: z.string(),
    title: z.string(),
    severity: z.enum(['blocks', 'held', 'note']),
    explains: z.string(),
    limit: z.string(),
    severities: z
      .array(z.enum(['blocks', 'held', 'note']))
      .optional()
      .describe('Severities that a method version may give it'),
    limits: z
      .array(
        z.strictObject({
          name: z.string(),
          words: z.string(),
          value: decimal,
          unit: z.string(),
          atLeast: decimal.describe('A method version may set it from here'),
          atMost: decimal.describe('to here'),
        }),
      )
      .optional()
      .describe('Numbers that a method version may set'),
    source: z.string().optional().describe('Where rule and limits come from'),
    example: z.string().optional().describe('A submission that triggers it'),
  })
  .describe('One automatic check');

export const catalogueDocumentSchema = z
  .strictObject({
    ...heading,
    makers: z
      .array(
        z.strictObject({
          slug,
          name: z.string(),
          lines: z.array(
            z.strictObject({
              slug,
              name: z.string(),
              material: z.string(),
              construction: z.string(),
              carriers: z.int().nullable(),
              variants: z.array(variantNameSchema),
            }),
          ),
        }),
      )
      .describe('Makers, their lines and variants in this edition'),
    methods: z.array(z.strictObject({ slug, number: z.int() })).describe('Method versions in this release'),
    checks: z.array(checkDocumentSchema).describe('Checks pinned by this edition'),
  })
  .describe('Names in a release');

export type CheckDocument = z.infer<typeof checkDocumentSchema>;
export type CatalogueDocument = z.infer<typeof catalogueDocumentSchema>;

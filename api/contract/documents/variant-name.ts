import { z } from 'zod';
import { decimal, slug } from './published-fields.js';

export const variantNameSchema = z
  .strictObject({
    slug,
    maker: z.strictObject({ slug, name: z.string().describe('Name of the maker') }).describe('Maker'),
    line: z.strictObject({ slug, name: z.string().describe('Name of the line') }).describe('Line'),
    size: z.string().describe('Size as on the label'),
    colour: z.string().describe('Colour as on the label'),
    material: z.string().describe('Material, e.g. UHMWPE'),
    construction: z.enum(['braided', 'fused', 'hollowCore', 'twisted', 'monofilament']).describe('How the line is made'),
    carriers: z.int().nullable().describe('Ends braided; null where the line is not braided'),
    peNumber: decimal.nullable().describe('PE number on the label'),
    ratedStrength: z
      .strictObject({ value: decimal, unit: z.string().describe('Unit as printed') })
      .nullable()
      .describe('Rated strength as printed'),
  })
  .describe('What a variant is called');

export type VariantName = z.infer<typeof variantNameSchema>;

/** Requests and answers of makers, lines, variants and claims. */
import { z } from 'zod';
import { pageLimit } from '../page-query.js';
import { CLAIM_BASES, CLAIMED_QUANTITIES } from '../claims.js';
import { CONSTRUCTIONS } from '../constructions.js';
import { shownName } from '../display-name.js';
import { formerSchema, supersedingReason } from '../former.js';
import { retiredSchema } from '../retired.js';
import { slug } from '../slug.js';

const name = shownName(120);
const version = z.int().describe('Number in the ETag');
const nextCursor = z.string().nullable().describe('Send it as cursor to go on; null on the last page');
const atLeastOne = [
  ({ reason: _, ...change }: { reason?: string | undefined }) => Object.keys(change).length > 0,
  { message: 'Nothing to change; send at least one field.' },
] as const;

export const pageQuery = z.strictObject({
  limit: pageLimit(),
  cursor: z.string().max(60).optional().describe('nextCursor of the page before'),
});

export const SUCCEEDED_KINDS = ['maker', 'line', 'variant'] as const;
export const successionRequest = z.strictObject({
  kind: z.enum(SUCCEEDED_KINDS).describe('What has a successor'),
  slug: slug.describe('Slug that stays, and leads on from now'),
  successor: slug.describe('Slug of what takes its place'),
  reason: z.string().trim().min(1, 'Say it in words').max(2000).describe('Why, e.g. the maker sells it under another name'),
});
export const successionSchema = successionRequest
  .extend({ at: z.iso.datetime().describe('Since when, RFC 3339 in UTC') })
  .describe('What took the place of something, and since when');
export const successionsResponse = z.strictObject({ items: z.array(successionSchema).describe('Oldest first'), nextCursor });
export type SuccessionRequest = z.infer<typeof successionRequest>;

export const makerRequest = z.strictObject({ slug, name: name.describe('Name of the company') });
export const makerChange = z.strictObject({ name: name.describe('Name of the company'), reason: supersedingReason.optional() });
const standing = {
  retired: retiredSchema,
  former: formerSchema.optional(),
  version,
};
export const retirementRequest = z.strictObject({ reason: z.string().trim().min(1, 'Say it in words').max(2000).describe('Why') });
export const makerResponse = z.strictObject({ slug, name: z.string().describe('Name of the company'), ...standing });
export const makersResponse = z.strictObject({ items: z.array(makerResponse), nextCursor });

const lineFields = {
  name: name.describe('Name that the maker sells it under'),
  material: z.string().trim().min(1).max(60).describe('Material, e.g. UHMWPE, nylon, fluorocarbon'),
  construction: z.enum(CONSTRUCTIONS).describe('How the line is made'),
  carriers: z.int().min(2).max(64).nullable().describe('Ends braided; null where the line is not braided or it is not known'),
  densityGPerCm3: z
    .string()
    .regex(/^(?=.*[1-9])\d{1,2}(\.\d{1,4})?$/, 'Expected a density above 0 in g/cm³ as text, at most four places, e.g. "0.97"')
    .describe('Density of the solid material [g/cm³]'),
};
export const lineRequest = z.strictObject({ slug, maker: z.string().max(60).describe('Slug of the maker'), ...lineFields });
export const lineChange = z
  .strictObject({ ...lineFields, reason: supersedingReason })
  .partial()
  .refine(...atLeastOne);
export const lineResponse = z.strictObject({
  slug,
  maker: slug.describe('Slug of the maker'),
  name: z.string().describe('Name that the maker sells it under'),
  material: z.string().describe('Material'),
  construction: z.enum(CONSTRUCTIONS).describe('How the line is made'),
  carriers: z.int().nullable().describe('Ends braided'),
  densityGPerCm3: z.string().describe('Density of the solid material [g/cm³]'),
  ...standing,
});
export const linesResponse = z.strictObject({ items: z.array(lineResponse), nextCursor });

const printed = z
  .strictObject({
    text: z
      .string()
      .trim()
      .max(40)
      .regex(/^\d+(\.\d+)?$/, 'Expected a number such as 20 or 0.18, with a point')
      .describe('Number as printed'),
    unit: z.string().trim().min(1).max(10).describe('Unit as printed: lbf, kgf, N, mm, in, den, tex …; PE for a PE number'),
  })
  .describe('As printed on the label');
const claimFields = {
  basis: z.enum(CLAIM_BASES).describe('What the label says the number is'),
  printed,
  seenOn: z.iso.date().describe('When it was seen'),
  source: z.string().trim().min(1).max(400).describe('Where it was seen: label, page'),
};
export const claimRequest = z.strictObject({ quantity: z.enum(CLAIMED_QUANTITIES).describe('What is claimed'), ...claimFields });
export const claimCorrection = z.strictObject({ ...claimFields, reason: supersedingReason.optional() });
export const claimResponse = z.strictObject({
  quantity: z.enum(CLAIMED_QUANTITIES).describe('What is claimed'),
  basis: z.enum(CLAIM_BASES).describe('What the label says the number is'),
  printed: z
    .strictObject({ text: z.string().describe('Number as printed'), unit: z.string().describe('Unit as printed') })
    .describe('As printed on the label'),
  value: z.string().describe('The same in SI, exact'),
  unit: z.string().describe('SI unit; PE for a PE number'),
  seenOn: z.iso.date().describe('When it was seen'),
  source: z.string().describe('Where it was seen'),
});

const variantFields = {
  size: z.string().trim().min(1).max(60).describe('Size as on the label'),
  colour: z.string().trim().min(1).max(60).describe('Colour as on the label'),
};
export const variantRequest = z.strictObject({ slug, line: z.string().max(60).describe('Slug of the line'), ...variantFields });
export const variantChange = z
  .strictObject({ ...variantFields, reason: supersedingReason })
  .partial()
  .refine(...atLeastOne);
export const variantResponse = z.strictObject({
  slug,
  line: slug.describe('Slug of the line'),
  maker: slug.describe('Slug of the maker'),
  size: z.string().describe('Size as on the label'),
  colour: z.string().describe('Colour as on the label'),
  claims: z.array(claimResponse).describe('What the label says, by quantity'),
  ...standing,
});
export const variantsResponse = z.strictObject({ items: z.array(variantResponse), nextCursor });

export type PageQuery = z.infer<typeof pageQuery>;
export type MakerRequest = z.infer<typeof makerRequest>;
export type MakerChange = z.infer<typeof makerChange>;
export type MakerResponse = z.infer<typeof makerResponse>;
export type LineRequest = z.infer<typeof lineRequest>;
export type LineChange = z.infer<typeof lineChange>;
export type LineResponse = z.infer<typeof lineResponse>;
export type ClaimRequest = z.infer<typeof claimRequest>;
export type ClaimCorrection = z.infer<typeof claimCorrection>;
export type ClaimResponse = z.infer<typeof claimResponse>;
export type VariantRequest = z.infer<typeof variantRequest>;
export type VariantChange = z.infer<typeof variantChange>;
export type VariantResponse = z.infer<typeof variantResponse>;
export type RetirementRequest = z.infer<typeof retirementRequest>;

/** Requests and answers of spools, for editors (the key) and for testers (the blind code alone). */
import { z } from 'zod';
import { formerSchema, supersedingReason } from '../former.js';
import { retiredSchema } from '../retired.js';
import { SPOOL_SOURCES } from '../spool-sources.js';

const blindCode = z.string().describe('What a tester sees in place of maker and line: six characters and a check character');
const words = z.string().trim().min(1);
const nextCursor = z.string().nullable().describe('Send it as cursor to go on; null on the last page');

const spoolFields = {
  variant: z.string().max(60).describe('Slug of the variant'),
  source: z.enum(SPOOL_SOURCES).describe('How it was obtained'),
  obtainedOn: z.iso.date().describe('When it was obtained'),
  place: words.max(200).describe('Where it was obtained, in words'),
  lot: words.max(80).nullable().describe('Lot on the label'),
  lengthM: z
    .string()
    .regex(/^(?=.*[1-9])\d{1,6}(\.\d{1,3})?$/, 'Expected a length above 0 in metres as text, e.g. "150"')
    .nullable()
    .describe('Length on the spool [m]'),
};
export const spoolRequest = z.strictObject(spoolFields);
export const spoolChange = z
  .strictObject({ ...spoolFields, reason: supersedingReason })
  .partial()
  .refine(({ reason: _, ...change }) => Object.keys(change).length > 0, { message: 'Nothing to change; send at least one field.' });

export const spoolResponse = z.strictObject({
  blindCode,
  variant: z.string().describe('Slug of the variant, as is known now'),
  source: z.enum(SPOOL_SOURCES).describe('How it was obtained'),
  obtainedOn: z.iso.date().describe('When it was obtained'),
  place: z.string().describe('Where it was obtained'),
  lot: z.string().nullable().describe('Lot on the label'),
  lengthM: z.string().nullable().describe('Length on the spool [m]'),
  reidentifications: z
    .array(
      z.strictObject({
        fromVariant: z.string().describe('Slug of the variant that it was taken for'),
        toVariant: z.string().describe('Slug of the variant that it was found to be'),
        reason: z.string().describe('How it was found out'),
        by: z.string().describe('Name of the editor'),
        at: z.iso.datetime().describe('When, UTC'),
      }),
    )
    .describe('Oldest first'),
  retired: retiredSchema.describe('Since when and why it is not pulled any more; it stays readable'),
  former: formerSchema.optional(),
  version: z.int().describe('Number in the ETag'),
});
export const spoolsResponse = z.strictObject({ items: z.array(spoolResponse), nextCursor });

export const blindSpoolsResponse = z
  .strictObject({
    items: z.array(z.strictObject({ blindCode, lengthM: z.string().nullable().describe('Length on the spool [m]') })),
    nextCursor,
  })
  .describe('Spools that the tester was asked for, has begun or has handed in');

export type SpoolRequest = z.infer<typeof spoolRequest>;
export type SpoolChange = z.infer<typeof spoolChange>;
export type SpoolResponse = z.infer<typeof spoolResponse>;

/** One code or many: the same name given again. */
export const labelsQuery = z.strictObject({
  code: z
    .preprocess((given) => (typeof given === 'string' ? [given] : given), z.array(z.string().max(20)).min(1).max(200))
    .describe('Blind codes'),
});
export type LabelsQuery = z.infer<typeof labelsQuery>;

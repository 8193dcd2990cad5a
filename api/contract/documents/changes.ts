import { z } from 'zod';
import { pageLimit } from '../page-query.js';
import { erratumSchema } from './release-documents.js';

export const CHANGE_KINDS = [
  'edition.opened',
  'edition.closed',
  'release.published',
  'erratum.published',
  'variant.renamed',
  'variant.reidentified',
  'thing.succeeded',
] as const;

/** Something that is called otherwise from now on, or that another took the place of. */
export const changedThingSchema = z
  .strictObject({
    kind: z.enum(['maker', 'line', 'variant']).describe('What it is'),
    slug: z.string().describe('Its slug, which never changes'),
    name: z.string().optional().describe('What it is called now; absent where its name did not change'),
    successor: z.string().optional().describe('Slug of what took its place, or of what its results went to'),
  })
  .describe('What was renamed, re-identified or succeeded');

/** What became true, for those who keep a copy. A kind may be added; fields only grow. */
export const publicChangeSchema = z
  .strictObject({
    number: z.int().describe('Running number without gaps, in the order in which changes became true'),
    at: z.iso.datetime().describe('When, RFC 3339 in UTC'),
    kind: z.enum(CHANGE_KINDS).describe('What happened'),
    edition: z.string().nullable().describe('Slug of the edition; null where a thing changed'),
    thing: changedThingSchema.nullable().describe('What was renamed, re-identified or succeeded; null where an edition changed'),
    revision: z.int().nullable().describe('Revision that was published; null where none was'),
    digest: z.string().nullable().describe('SHA-256 of its manifest, hex'),
    manifest: z.string().nullable().describe('Address of its manifest, which lists every file with its digest'),
    erratum: erratumSchema.nullable().describe('Changed cells and computed consequences; null unless it corrects'),
  })
  .describe('A change that anybody may be told of');

export const publicChangesQuery = z.strictObject({
  after: z.coerce
    .number()
    .int()
    .min(0)
    .max(Number.MAX_SAFE_INTEGER)
    .default(0)
    .describe('Number of the last change that you have; 0 for none'),
  limit: pageLimit({ usual: 100 }),
});

export const publicChangesResponse = z
  .strictObject({
    items: z.array(publicChangeSchema).describe('In the order in which they became true'),
    lastNumber: z.int().describe('What to send as after the next time; the same as before when nothing followed'),
  })
  .describe('What changed since');

export type PublicChange = z.infer<typeof publicChangeSchema>;

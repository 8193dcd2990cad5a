/** Photos: pictures of a break, a label or an apparatus, kept beside a submission or a spool as evidence. */
import { z } from 'zod';

export const PHOTO_SHOWS = ['break', 'label', 'apparatus', 'other'] as const;
/** Most pictures of one submission or spool. */
export const MOST_PHOTOS = 24;

const shows = z.enum(PHOTO_SHOWS).describe('What is to be seen; whoever adds or opens a label has read what the spool is');

export const photosResponse = z.strictObject({
  items: z
    .array(
      z.strictObject({
        id: z.uuid(),
        shows,
        specimen: z.int().nullable().describe('Number of the specimen that it is of; null where of none'),
        digest: z.string().describe('SHA-256 of the picture as it is kept, in hexadecimal'),
        width: z.int().describe('[pixels]'),
        height: z.int().describe('[pixels]'),
        sizeBytes: z.int(),
        addedAt: z.iso.datetime(),
        isRemovable: z.boolean().describe('Whether you can take it away now'),
      }),
    )
    .describe('In the order in which they were added'),
  nextCursor: z.null(),
});
export const spoolPhotoQuery = z.strictObject({ shows: shows.default('label') });
export const submissionPhotoQuery = z.strictObject({
  shows: shows.default('break'),
  specimen: z.coerce.number().int().min(1).max(500).optional().describe('Specimen that it is of'),
});
export const photoParameter = z.uuid().describe('Id of the photo');

export type PhotoShows = (typeof PHOTO_SHOWS)[number];
export type Photo = z.infer<typeof photosResponse>['items'][number];

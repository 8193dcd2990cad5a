import { z } from 'zod';
import { orderStateSchema } from '../order-state.js';
import { erratumSchema } from '../documents/release-documents.js';

/** Cells that a correction may expect: those of some hundred variants, whatever is told of them. */
const MOST_EXPECTED = 5000;
/** A cell may hold all that a house says of itself. */
const LONGEST_CELL = 50_000;

const tooManyExpected = ({ input }: { readonly input?: unknown }): string =>
  `Found ${Array.isArray(input) ? input.length : 'too many'} cells, expected at most ${MOST_EXPECTED}: leave out those that only follow from others, as intervals and chances do. The erratum tells every cell that changes, expected or not`;

export const releaseRequest = z.strictObject({
  erratum: z
    .strictObject({
      reasonCode: erratumSchema.shape.reasonCode,
      words: z.string().trim().min(1).max(2000).describe('What changed and why, for readers'),
      expects: z
        .array(
          z.strictObject({
            where: z.string().max(500).describe('Cell, as an erratum names it: "overall, <variant>, place"'),
            before: z.string().max(LONGEST_CELL).describe('What readers see there now'),
          }),
        )
        .min(1, 'Name at least one cell that differs from what is published')
        .max(MOST_EXPECTED, { error: tooManyExpected })
        .describe('What the correction takes for published now; if any of it is no longer so, nothing is published'),
    })
    .nullable()
    .default(null)
    .describe('Needed from the second revision on'),
  publishAt: z.iso.datetime().nullable().default(null).describe('When readers see it, UTC; null: as soon as it is built'),
});
/** Of a release in an address. */
export const releaseParameter = z.coerce.number().int().min(1).max(999_999).describe('Number of the revision, from 1');

export const releaseStateResponse = z.strictObject({
  edition: z.string(),
  revision: z.int(),
  state: z.enum(['building', 'published', 'superseded']),
  digest: z.string().nullable(),
  publishAt: z.iso.datetime().nullable().describe('When it is to be published; null: as soon as it is built'),
  order: orderStateSchema.nullable().describe('How far the worker is with it; null for one of long ago'),
});
export type ReleaseRequest = z.infer<typeof releaseRequest>;

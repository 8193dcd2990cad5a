import { z } from 'zod';
import {
  catalogueDocumentSchema,
  checkDocumentSchema,
  releaseSummarySchema,
  signingKeySchema,
  variantDocumentSchema,
} from '../documents/release-documents.js';

const nextCursor = z.string().nullable().describe('What to send as cursor for the items that follow; null at the end');
const listOf = <Item extends z.ZodType>(item: Item, order: string) => z.strictObject({ items: z.array(item).describe(order), nextCursor });

export const releasesResponse = listOf(releaseSummarySchema, 'Newest edition first');

export const signingKeysResponse = listOf(signingKeySchema, 'Newest first');

/** Filters of a category's standings; each narrows the rows, places stay as published. */
export const standingsQuery = z.strictObject({
  maker: z.string().optional().describe('Slug of a maker'),
  material: z.string().optional().describe('Material'),
  construction: z.string().optional().describe('Construction'),
  carriers: z.coerce.number().int().optional().describe('Ends braided'),
  peNumber: z.string().optional().describe('PE number on the label'),
});
export type StandingsQuery = z.infer<typeof standingsQuery>;

const publishedMaker = catalogueDocumentSchema.shape.makers.element;
const publishedLine = publishedMaker.shape.lines.element;

export const publishedMakersResponse = listOf(publishedMaker, 'Makers with their lines, by slug');

export const publishedLinesResponse = listOf(
  publishedLine.extend({ maker: publishedMaker.pick({ slug: true, name: true }).describe('Its maker') }),
  'Lines with their variants, by maker and line',
);

export const publishedChecksResponse = listOf(checkDocumentSchema, 'As the edition pinned them');

export const variantHistoryResponse = variantDocumentSchema.pick({ variant: true, history: true });

export const variantSpecimensResponse = variantDocumentSchema.pick({ variant: true, submissions: true });

export const problemKindSchema = z
  .strictObject({
    code: z.string().describe('Stable code'),
    status: z.int().describe('HTTP status'),
    title: z.string().describe('The kind of problem, in a line'),
    explains: z.string().describe('What to do about it'),
  })
  .describe('A kind of problem that the API answers with');

export const problemsResponse = listOf(problemKindSchema, 'By the part of the program that they come from');

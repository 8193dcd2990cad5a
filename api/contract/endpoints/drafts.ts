import { z } from 'zod';

const DRAFT_LIMIT = 1_000_000;

/** A draft names what it is about; the rest is kept as typed. */
export const draftContent = z
  .looseObject({
    edition: z.string().max(60).describe('Slug of the edition'),
    spool: z.string().max(20).describe('Blind code of the spool'),
    method: z.string().max(60).describe('Slug of the method'),
    methodVersion: z.int().min(1).describe('Version of the method'),
    benchDay: z.iso.date().describe('Local date of the bench day'),
  })
  .refine(
    (draft) => JSON.stringify(draft).length <= DRAFT_LIMIT,
    `A draft has at most ${DRAFT_LIMIT} characters; hand it in, or split it.`,
  );
export const draftRequest = z.strictObject({ content: draftContent });

export const draftHistoryResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      version: z.int(),
      savedAt: z.iso.datetime().describe('When the next save replaced it'),
      content: z.record(z.string(), z.unknown()),
    }),
  ),
  nextCursor: z.null(),
});

export type DraftContent = z.infer<typeof draftContent>;

import { z } from 'zod';

const DRAFT_LIMIT = 1_000_000;

const draftFields = {
  edition: z.string().max(60).describe('Slug of the edition'),
  spool: z.string().max(20).describe('Blind code of the spool'),
  method: z.string().max(60).describe('Slug of the method'),
  methodVersion: z.int().min(1).describe('Version of the method'),
  benchDay: z.iso.date().describe('Local date of the bench day'),
};
const isShort = (draft: object): boolean => JSON.stringify(draft).length <= DRAFT_LIMIT;
const TOO_LONG = `A draft has at most ${DRAFT_LIMIT} characters; hand it in, or split it.`;

/** A draft names what it is about; the rest is kept as typed. */
export const draftContent = z.looseObject(draftFields).refine(isShort, TOO_LONG);
export const draftRequest = z.strictObject({ content: draftContent });

/** One begins from the spool and the method on: the day is today's, the edition the one that is open, the version the one it pins. */
export const begunDraft = z
  .looseObject({
    ...draftFields,
    edition: draftFields.edition.optional().describe('Slug of the edition; left out: the one that is open'),
    methodVersion: draftFields.methodVersion.optional().describe('Version of the method; left out: the one that the edition pins'),
    benchDay: draftFields.benchDay.optional().describe('Local date of the bench day; left out: today, UTC'),
  })
  .refine(isShort, TOO_LONG)
  .describe('What a draft is begun with: spool and method; the rest is found, or kept as typed');
export const draftBeginning = z.strictObject({ content: begunDraft });

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
export type BegunDraft = z.infer<typeof begunDraft>;

/** Requests and answers of blind re-tests. */
import { z } from 'zod';

/** Share that the desk proposes for a draw [%]. */
export const USUAL_DRAW_PERCENT = 10;

export const drawRequest = z.strictObject({ percent: z.number().gt(0).max(100).describe('Share of the accepted results of pulls [%]') });
export const retestsResponse = z.strictObject({
  seed: z.string().nullable().describe('SHA-256 of "<blindKeyDigest> <edition>"; null before the draw'),
  percent: z.string().nullable().describe('Share that was drawn [%]'),
  items: z
    .array(
      z.strictObject({
        original: z.string().describe('Reference of the result'),
        spool: z.string().describe('Blind code under which it is tested again'),
        method: z.string().describe('Slug'),
        isDone: z.boolean().describe('Whether an accepted submission of the new code is there'),
      }),
    )
    .describe('In the order of the draw'),
  nextCursor: z.null(),
});

export type DrawRequest = z.infer<typeof drawRequest>;

/** What was tested again, blind, and how far it differs, as a release tells it. */
import { z } from 'zod';
import { heading } from './release-documents.js';

const percent = z.string().regex(/^\d+(\.\d+)?$/);
const digest = z.string().regex(/^[0-9a-f]{64}$/);

export const retestsDocumentSchema = z
  .strictObject({
    ...heading,
    draw: z
      .strictObject({
        seed: digest.describe('SHA-256 of "<blindKeyDigest> <edition>"'),
        percent: percent.describe('Share that was drawn [%]'),
        from: z.array(z.string()).describe('References that were drawn from'),
        drawnOn: z.iso.date(),
      })
      .nullable()
      .describe('Drawn are the references whose SHA-256 of "<seed> <reference>" is smallest; null without a draw'),
    pairs: z.array(
      z.strictObject({
        original: z.string(),
        again: z.string().nullable().describe('Reference of the second result; null where there is none'),
        variant: z.string().nullable(),
        method: z.string().nullable(),
        first: z.string().nullable().describe('Mean force [N], or share kept [%]'),
        second: z.string().nullable(),
        unit: z.enum(['N', '%']).nullable(),
        differencePercent: z.string().nullable().describe('Second over first, less 100 [%]'),
      }),
    ),
    reproducibility: z
      .array(z.strictObject({ method: z.string(), pairs: z.int(), relativePercent: percent, low: percent, high: percent }))
      .describe('Standard deviation of a single result by somebody else on another rig, with its 95 % interval [%], by method'),
  })
  .describe('Blind re-tests of an edition');

export type RetestsDocument = z.infer<typeof retestsDocumentSchema>;

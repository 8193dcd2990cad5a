/** The chain behind published figures: release → result → submission and its revision → specimen → reading as entered → instrument → certificate. */
import { z } from 'zod';
import { figureSchema, publishedSubmissionSchema } from './release-documents.js';
import { certificateSchema } from './rigs-document.js';

const provenSubmission = z.strictObject({
  ...publishedSubmissionSchema.shape,
  instruments: z.array(
    z.strictObject({
      code: z.string(),
      name: z.string().nullable(),
      kind: z.string().nullable(),
      calibration: certificateSchema.nullable().describe('Certificate that was valid on the bench day'),
    }),
  ),
});

export const provenanceQuery = z.strictObject({
  quantity: z.string().max(300).optional().describe('Only of this quantity, e.g. retention/fg-knot/knotted'),
});
export const provenanceResponse = z
  .strictObject({
    release: z.strictObject({
      edition: z.string(),
      revision: z.int(),
      digest: z.string().describe('SHA-256 of the manifest'),
      manifest: z.string().describe('Address of the manifest'),
      document: z.string().describe('Address of the document that all of this is taken from'),
    }),
    variant: z.string(),
    figures: z.array(
      z.strictObject({
        quantity: z.string(),
        figure: figureSchema.nullable().describe('As published'),
        submissions: z.array(provenSubmission).describe('Everything that it was computed from'),
      }),
    ),
  })
  .describe('Where the figures of a variant come from');

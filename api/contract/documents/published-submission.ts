/** An accepted submission with all that was read, as a release carries it. */
import { z } from 'zod';
import { figureSchema } from './figure.js';
import { date, decimal, slug } from './published-fields.js';
import { traceSchema } from './trace.js';

export const publishedReadingSchema = z
  .strictObject({
    role: z.string().describe('What was read'),
    station: z.int().nullable().describe('Station along the specimen'),
    entered: z.strictObject({ text: z.string().describe('As typed'), unit: z.string().describe('Unit as entered') }).describe('As entered'),
    value: decimal.describe('In SI, exact'),
    unit: z.string().describe('SI unit'),
  })
  .describe('One reading');

export const publishedSpecimenSchema = z
  .strictObject({
    number: z.int().describe('Number within the submission'),
    condition: z.enum(['untreated', 'treated']).describe('Whether knotted or abraded'),
    state: z.enum(['valid', 'invalid', 'setAside']).describe('Only valid specimens count'),
    reason: z.string().nullable().describe('Why it does not count'),
    readings: z.array(publishedReadingSchema).describe('Readings'),
    trace: traceSchema.optional(),
  })
  .describe('One specimen');

export const publishedSubmissionSchema = z
  .strictObject({
    reference: z.string().describe('Reference of the submission'),
    revision: z.int().describe('Revision that was accepted'),
    method: slug,
    methodVersion: z.int().describe('Version'),
    tester: z.string().describe('Display name of the tester'),
    reviewer: z.string().describe('Display name of the second person'),
    rig: z.string().describe('Code of the force or diameter instrument'),
    instruments: z
      .array(z.strictObject({ code: z.string(), calibration: z.string().nullable().describe('Certificate valid on the bench day') }))
      .describe('Instruments used'),
    spool: z.string().describe('Blind code'),
    benchDay: date,
    isBlind: z
      .boolean()
      .optional()
      .describe('False where its tester had seen the label or read what tells of the spool; not told in format 1'),
    figures: z.array(figureSchema).describe('Figures of this submission'),
    findings: z
      .array(
        z.strictObject({ code: z.string(), message: z.string(), resolution: z.string().nullable().describe('What the reviewer wrote') }),
      )
      .describe('What the checks found'),
    specimens: z.array(publishedSpecimenSchema).describe('Every specimen, counted or not'),
  })
  .describe('One accepted submission');

export type PublishedSubmission = z.infer<typeof publishedSubmissionSchema>;
export type PublishedSpecimen = z.infer<typeof publishedSpecimenSchema>;

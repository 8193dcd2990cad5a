import { z } from 'zod';

export const restingSchema = z
  .strictObject({
    submissions: z.array(z.string()).describe('References of submissions that were handed in'),
    editions: z.array(z.string()).describe('Slugs of their editions; a published one needs a release with an erratum to tell it'),
  })
  .describe('What rested on it');
export const formerSchema = z
  .array(
    z.strictObject({
      kind: z.enum(['maker', 'line', 'variant', 'claim', 'spool', 'calibration']),
      was: z.record(z.string(), z.unknown()).describe('What it said'),
      reason: z.string().describe('Why it says otherwise now'),
      at: z.iso.datetime(),
      rested: restingSchema,
    }),
  )
  .describe('What it said before it was superseded, oldest first');
export const supersedingReason = z
  .string()
  .trim()
  .min(1, 'Say it in words')
  .max(2000)
  .describe('Why; needed once a submission rests on it: what stood there is kept beside it');

export type Resting = z.infer<typeof restingSchema>;
export type Former = z.infer<typeof formerSchema>;

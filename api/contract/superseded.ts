/** A row of the catalogue or a certificate that was put right after readings rested on it. */
import { z } from 'zod';

export const supersededSchema = z
  .strictObject({
    kind: z.enum(['maker', 'line', 'variant', 'claim', 'spool', 'calibration']),
    what: z.string().describe('Which row: a slug, a blind code, a claim or a certificate'),
    was: z.string().describe('What it said before, in words'),
    reason: z.string().describe('Why it says otherwise now'),
    on: z.iso.date().describe('Since when'),
    submissions: z.array(z.string()).describe('Results that rested on it, by reference'),
  })
  .describe('What stood on record otherwise when results rested on it');

export type Superseded = z.infer<typeof supersededSchema>;

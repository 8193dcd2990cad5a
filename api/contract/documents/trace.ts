/** A trace as the API and releases show it. */
import { z } from 'zod';

const decimal = z.string().regex(/^-?\d+(\.\d+)?$/);

export const traceSchema = z
  .strictObject({
    digest: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe('SHA-256 of the file as handed in'),
    over: z.enum(['extension', 'time']).describe('What the force was recorded over'),
    samples: z.int().describe('Samples in the file'),
    figures: z.strictObject({
      peakForceN: decimal.describe('Highest force [N]'),
      atPeak: decimal.describe('Extension [mm] or time [s] at the highest force'),
      elongationPercent: decimal.nullable().describe('Elongation at the highest force, without the toe [%]'),
      stiffnessNPerMm: decimal.nullable().describe('Slope between 10 and 50 % of the highest force [N/mm]'),
      initialModulusMPa: decimal.nullable().describe('Initial modulus [MPa]'),
      workToBreakJ: decimal.nullable().describe('Work up to the highest force [J]'),
      slips: z
        .array(z.strictObject({ at: decimal, fromForceN: decimal, toForceN: decimal }))
        .describe('Drops of more than 5 % before the highest force'),
    }),
    points: z
      .array(z.tuple([z.number(), z.number()]))
      .max(64)
      .describe('Its course: extension [mm] or time [s], and force [N]; lowest and highest of each stretch'),
  })
  .describe('Force over extension or time of one specimen');

export type PublishedTrace = z.infer<typeof traceSchema>;

/** The series of readings that a method version yields, from a closed list of kinds. */
import { z } from 'zod';

const code = z
  .string()
  .max(40)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'Expected lower-case letters, digits and single hyphens, e.g. knotted')
  .describe('Code of the series in its method; the next version keeps it where the series goes on');
const words = z.string().trim().min(1).max(2000);

export const TREATMENT_KINDS = ['knot', 'abrasion'] as const;
export const SERIES_KINDS = ['breakingForce', 'diameterAlongStations', 'linearDensity'] as const;

export const treatmentSchema = z
  .strictObject({
    kind: z.enum(TREATMENT_KINDS).describe('What is done to the specimen before the pull'),
    name: z.string().trim().min(1).max(60).describe('Short name, e.g. Palomar'),
    words: words.describe('How it is done'),
  })
  .describe('What a specimen goes through before it is pulled');

export const methodSeriesSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      code,
      kind: z.literal('breakingForce'),
      treatment: treatmentSchema.nullable().describe('Null for specimens that are pulled as they come from the spool'),
    })
    .describe('Force at which a specimen parts'),
  z
    .strictObject({
      code,
      kind: z.literal('diameterAlongStations'),
      stations: z.int().min(1).max(100).describe('Least number of stations on each specimen'),
    })
    .describe('Widest and narrowest diameter at stations along a specimen'),
  z.strictObject({ code, kind: z.literal('linearDensity') }).describe('Mass and length of a piece'),
]);
export type MethodSeries = z.infer<typeof methodSeriesSchema>;

/** Which specimens of a submission a series is read from: no two series of a version may share them. */
const readFrom = (series: MethodSeries): string =>
  series.kind === 'breakingForce' ? `breakingForce of ${series.treatment ? 'treated' : 'untreated'} specimens` : series.kind;

export const methodSeriesListSchema = z
  .array(methodSeriesSchema)
  .min(1, 'Expected at least one series: a method without one yields no result')
  .max(4)
  .superRefine((list, context) => {
    list.forEach((series, index) => {
      const earlier = list.slice(0, index);
      if (earlier.some((other) => other.code === series.code)) {
        context.addIssue({
          code: 'custom',
          path: [index, 'code'],
          message: `Series "${series.code}" is there twice; give each its own code.`,
        });
      }
      if (earlier.some((other) => readFrom(other) === readFrom(series))) {
        context.addIssue({
          code: 'custom',
          path: [index],
          message: `A second series of ${readFrom(series)}: a submission could not tell their specimens apart. Make it a method of its own.`,
        });
      }
    });
  })
  .describe('What the method yields: one row of readings each');

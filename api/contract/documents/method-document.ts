import { z } from 'zod';
import { methodSeriesSchema } from '../method-series.js';
import type { MethodSeries } from '../method-series.js';
import { date, formatVersion, slug } from './published-fields.js';

export const methodDocumentSchema = z
  .strictObject({
    formatVersion,
    slug,
    name: z.string(),
    number: z.int(),
    effectiveFrom: date,
    effectiveUntil: date.nullable(),
    purpose: z.string(),
    apparatus: z.array(z.string()),
    steps: z.array(z.string()),
    series: z.array(methodSeriesSchema).optional().describe('What the method yields; not told by format 1'),
    parameters: z.array(z.strictObject({ name: z.string(), value: z.string(), unit: z.string() })),
    formulae: z.array(z.strictObject({ figure: z.string(), formula: z.string(), where: z.string() })),
    limits: z.array(z.strictObject({ name: z.string(), value: z.string(), unit: z.string() })),
    checks: z.array(z.string()).describe('Codes of the checks applied'),
    checkSettings: z
      .array(
        z.strictObject({
          check: z.string(),
          severity: z.string().nullable(),
          limits: z.array(z.strictObject({ name: z.string(), value: z.number() })),
        }),
      )
      .optional()
      .describe('What this version sets of its checks'),
    cautions: z.array(z.string()),
    sources: z.array(z.string()),
    changes: z.string().describe('What changed against the version before'),
    isComparableWithPrevious: z.boolean(),
  })
  .describe('One immutable version of a method');

export type PublishedSeries = MethodSeries;
export type MethodDocument = z.infer<typeof methodDocumentSchema>;

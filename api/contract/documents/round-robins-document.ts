/** How well testers agree, by round robins, as the API and releases tell it. */
import { z } from 'zod';
import { heading } from './release-documents.js';

const decimal = z.string().regex(/^-?\d+(\.\d+)?$/);

const roundRobinCellSchema = z.strictObject({
  tester: z.int().describe('Number of the tester'),
  instrument: z.string(),
  readings: z.array(z.strictObject({ text: z.string(), unit: z.string(), valueN: decimal })).describe('As displayed, and in N'),
  meanN: decimal.nullable(),
  sdN: decimal.nullable(),
  h: decimal.nullable().describe("Mandel's between-tester statistic"),
  k: decimal.nullable().describe("Mandel's within-tester statistic"),
  z: decimal.nullable().describe('z score against the robust mean and standard deviation (ISO 13528, algorithm A)'),
  isFar: z.boolean().describe('|h| above its critical value'),
  isWide: z.boolean().describe('k above its critical value'),
});

export const roundRobinReportSchema = z
  .strictObject({
    slug: z.string(),
    name: z.string(),
    words: z.string(),
    method: z.string(),
    specimens: z.int().describe('Specimens that each tester pulled of each spool'),
    testers: z.int().describe('How many took part'),
    closedOn: z.iso.date().nullable(),
    levels: z.array(
      z.strictObject({
        level: z.string().describe('Blind code of the spool'),
        meanN: decimal.nullable(),
        repeatabilitySdN: decimal.nullable().describe('One tester, one rig'),
        betweenSdN: decimal.nullable().describe('Between testers'),
        reproducibilitySdN: decimal.nullable().describe('Another tester, another rig'),
        hCritical: decimal.nullable().describe('At 0.5 %, as in ASTM E691'),
        kCritical: decimal.nullable(),
        cochran: z.strictObject({ statistic: decimal, isOutlier: z.boolean() }).nullable(),
        cells: z.array(roundRobinCellSchema),
      }),
    ),
  })
  .describe('A round robin by ISO 5725-2 and ASTM E691');

export const roundRobinsDocumentSchema = z
  .strictObject({
    ...heading,
    items: z.array(roundRobinReportSchema).describe('Closed while the edition was worked on; testers by number'),
  })
  .describe('Round robins of an edition');

export type RoundRobinReport = z.infer<typeof roundRobinReportSchema>;
export type RoundRobinsDocument = z.infer<typeof roundRobinsDocumentSchema>;

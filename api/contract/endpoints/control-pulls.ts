/** Requests and answers of control lines, control pulls and control charts. */
import { z } from 'zod';
import { benchCode as code } from '../bench-code.js';
import { chartPointSchema, controlChartSchema, rigDayState as state, runRuleName as signal } from '../documents/rigs-document.js';

const words = (most: number) => z.string().trim().min(1, 'Say it in words').max(most);
const day = z.iso.date();
const decimal = z
  .string()
  .max(30)
  .regex(/^-?\d+(\.\d+)?$/, 'Expected a decimal number with a point, e.g. "20.5"')
  .describe('Decimal number as typed');

export const controlLineRequest = z.strictObject({
  code,
  name: words(100).describe('What the reference spool is called at the bench'),
  lot: words(60).describe('Lot on its label; another lot is another control line'),
  words: words(1000).describe('What it is and how it is kept'),
});
export const controlLineResponse = z.strictObject({ ...controlLineRequest.shape, addedAt: z.iso.datetime() }).describe('A control line');
export const controlLinesResponse = z.strictObject({ items: z.array(controlLineResponse), nextCursor: z.null() });

export const controlPullRequest = z.strictObject({
  controlLine: code.describe('Code of the control line'),
  instrument: code.describe('Code of the force gauge or load frame'),
  method: z.string().describe('Slug of the method it is pulled by'),
  benchDay: day.describe('Day at the bench'),
  readings: z
    .array(z.strictObject({ text: z.string().trim().min(1).max(40), unit: z.string().trim().min(1).max(10) }))
    .min(1, 'Pull at least one specimen')
    .max(50)
    .describe('Breaking forces as displayed, one a specimen'),
  ambient: z
    .strictObject({
      temperature: z.strictObject({ text: decimal, unit: z.enum(['°C', '°F']) }),
      humidityPercent: decimal.refine((text) => Number(text) >= 0 && Number(text) <= 100, 'Expected 0 to 100'),
    })
    .nullable()
    .default(null)
    .describe('Air at the bench'),
  note: words(2000).nullable().default(null).describe('What was seen'),
});

export const chartsQuery = z.strictObject({
  instrument: z.string().optional().describe('Code of the rig'),
  method: z.string().optional().describe('Slug of the method'),
});
export const chartsResponse = z.strictObject({
  items: z.array(
    z.strictObject({ ...controlChartSchema.shape, points: z.array(z.strictObject({ id: z.uuid(), ...chartPointSchema.shape })) }),
  ),
  nextCursor: z.null(),
});

export const controlPullResponse = z
  .strictObject({
    id: z.uuid(),
    ...chartPointSchema.shape,
    doubted: z.int().describe('Submissions that came into doubt by it, back to the last good pull'),
  })
  .describe('A control pull as the pulls before it judge it');
export const strikeRequest = z.strictObject({ reason: words(2000).describe('Why it leaves the chart') });
export const controlPullId = z.uuid().describe('Id of the control pull');

export const rigsQuery = z.strictObject({ day: day.optional().describe('Bench day to be told of; by default that of the last pull') });
export const rigsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      instrument: z.string(),
      method: z.string(),
      state: state.describe('On the day that was asked for'),
      since: day.nullable().describe('Bench day of the pull since which the pulls say so; null where none does'),
      lastPullOn: day.nullable().describe('Bench day of the last control pull up to then; null for a rig that was never pulled'),
      pullsToLimits: z.int().describe('Control pulls that are wanting until there are limits; 0 where there are'),
      signals: z.array(signal).describe('What the last pull signalled'),
      words: z.string().describe('What that means and what to do'),
    }),
  ),
  nextCursor: z.null(),
});

export type ControlLineRequest = z.infer<typeof controlLineRequest>;
export type ControlPullRequest = z.infer<typeof controlPullRequest>;

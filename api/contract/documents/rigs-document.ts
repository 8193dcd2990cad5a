/** What an edition was measured with, as a release tells it: instruments, certificates, control charts. */
import { z } from 'zod';
import { heading } from './release-documents.js';

const day = z.iso.date();
const percent = z.string().regex(/^\d+\.\d$/);
const newtons = z.string().regex(/^-?\d+\.\d{3}$/);

export const controlState = z.enum(['inControl', 'outOfControl', 'noEvidence']).describe('Three states, never two');
export const rigDayState = z
  .enum(['inControl', 'outOfControl', 'learning', 'noEvidence'])
  .describe('Of a rig on a day; learning: it was pulled, and has too few pulls yet for limits');
export const runRuleName = z.string().describe('Run rule that signals');

export const chartPointSchema = z.strictObject({
  benchDay: day,
  tester: z.string().describe('Display name'),
  readings: z
    .array(z.strictObject({ text: z.string(), unit: z.string(), valueN: z.string().describe('[N]') }))
    .describe('Breaking forces as displayed, one a specimen'),
  meanN: newtons.describe('Mean of the readings [N]'),
  movingRangeN: newtons.nullable().describe('Distance from the pull before [N]'),
  centreN: newtons.nullable().describe('Centre of the limits that judged it [N]; null while there are too few pulls'),
  sigmaN: newtons.nullable().describe('Standard deviation that judged it, from the mean moving range [N]'),
  lowN: newtons.nullable().describe('Lower limit, centre − 3σ [N]'),
  highN: newtons.nullable().describe('Upper limit, centre + 3σ [N]'),
  ewmaN: newtons.nullable().describe('Exponentially weighted moving average, weight 0.2 [N]'),
  movingRangeHighN: newtons.nullable().optional().describe('Upper limit of the moving range, 3.267 times the mean moving range [N]'),
  ewmaLowN: newtons.nullable().optional().describe('Lower limit of the moving average [N]'),
  ewmaHighN: newtons.nullable().optional().describe('Upper limit of the moving average [N]'),
  warnings: z
    .array(z.enum(['movingRange', 'movingAverage']))
    .optional()
    .describe('What is beyond its limits without deciding anything; the run rules alone decide'),
  signals: z.array(runRuleName).describe('Run rules that signal'),
  state: controlState.nullable().describe('Null for a pull that was struck'),
  ambient: z
    .strictObject({
      temperature: z.strictObject({ text: z.string(), unit: z.string() }).describe('As displayed'),
      temperatureC: z.string().describe('[°C]'),
      humidityPercent: z.string().describe('[%]'),
    })
    .nullable()
    .optional()
    .describe('Air at the bench; null where nobody looked'),
  note: z.string().nullable(),
  strike: z.strictObject({ reason: z.string(), on: day }).nullable().describe('Why it was taken out of the chart'),
});
export const controlChartSchema = z
  .strictObject({
    instrument: z.string(),
    method: z.string(),
    controlLine: z.strictObject({ code: z.string(), name: z.string(), lot: z.string() }),
    points: z.array(chartPointSchema).describe('Oldest first'),
  })
  .describe('Individuals and moving-range chart of a control line on one rig by one method (NIST/SEMATECH e-Handbook 6.3.2.2)');

const entered = z.strictObject({ text: z.string(), unit: z.string() });
export const certificateSchema = z.strictObject({
  certificate: z.string(),
  validFrom: day,
  validUntil: day,
  correctionPercent: z.string(),
  expandedUncertaintyPercent: z.string(),
  coverageFactor: z.string(),
});

export const rigsDocumentSchema = z
  .strictObject({
    ...heading,
    testers: z
      .array(
        z.strictObject({
          name: z.string().describe('Display name'),
          submissions: z.int().describe('Accepted submissions'),
          specimens: z.int().describe('Specimens, counted or not'),
          benchDays: z.int().describe('Days at the bench'),
        }),
      )
      .describe('By name'),
    agreement: z
      .array(
        z.strictObject({
          quantity: z.string().describe('Quantity as a code, e.g. breakingForce/straight-pull/untreated'),
          name: z.string().optional().describe('The same in words; not told by format 1'),
          specimenPercent: percent.nullable().describe('Relative standard deviation of single specimens [%]'),
          betweenSubmissionsPercent: percent.describe(
            'What submissions of one variant differ by beyond that, as relative standard deviation [%]',
          ),
          degreesOfFreedom: z.int().describe('Of the latter'),
        }),
      )
      .describe('What testers and rigs together add to the scatter of specimens'),
    effects: z
      .array(
        z.strictObject({
          quantity: z.string().describe('Quantity as a code, e.g. breakingForce/straight-pull/untreated'),
          name: z.string().optional().describe('The same in words; not told by format 1'),
          cause: z.enum(['rig', 'tester']).describe('Whose effect it is'),
          relativePercent: z
            .string()
            .regex(/^\d+\.\d\d$/)
            .describe('Relative standard deviation between rigs, or between testers [%]'),
          degreesOfFreedom: z.number(),
          source: z.enum(['controlPulls', 'roundRobin']).describe('What tells it'),
        }),
      )
      .optional()
      .describe('Effects that the results take as told by control pulls or a round robin; a release from before there were any has none'),
    instruments: z.array(
      z.strictObject({
        code: z.string(),
        kind: z.string(),
        name: z.string(),
        capacity: entered,
        resolution: entered,
        calibrations: z.array(certificateSchema).describe('Oldest first'),
        submissions: z.int().describe('Accepted submissions of the edition that it was used in'),
        charts: z.array(controlChartSchema).describe('Control charts of a rig, up to the close of the edition'),
      }),
    ),
  })
  .describe('Who and what an edition was measured with: testers and their agreement, instruments, certificates, control charts');

export type ChartPoint = z.infer<typeof chartPointSchema>;
export type ControlChartDocument = z.infer<typeof controlChartSchema>;
export type RigsDocument = z.infer<typeof rigsDocumentSchema>;

/** What a method version states, and the requests and answers of the methods' endpoints. */
import { z } from 'zod';
import { methodSeriesListSchema, SERIES_KINDS } from '../method-series.js';
import { slug } from '../slug.js';

const words = z.string().trim().min(1).max(2000);
const share = z.number().min(0).max(100);

const window = (least: number, most: number, what: string) =>
  z
    .strictObject({
      low: z.number().min(least).max(most).describe('Lower end'),
      high: z.number().min(least).max(most).describe('Upper end'),
    })
    .refine((ends) => ends.low <= ends.high, {
      message: 'The lower end is above the upper end; exchange them or correct one.',
      path: ['low'],
    })
    .describe(what);

/** Limits that the checks hold a submission against. */
export const methodLimitsSchema = z
  .strictObject({
    minimumSpecimens: z.int().min(1).max(1000).describe('Least number of valid specimens of each condition'),
    maximumCvPercent: z.number().positive().max(100).describe('Largest coefficient of variation [%]'),
    gripBreakSharePercent: share.describe('Largest share of specimens that break at the grip [%]'),
    timeToBreakS: window(0.01, 3600, 'Time to break [s]').nullable().describe('Time to break [s]; null where nothing is broken'),
    ambientTemperatureC: window(-40, 60, 'Ambient temperature [°C]'),
    ambientHumidityPercent: window(0, 100, 'Relative humidity [%]'),
  })
  .describe('Limits that the checks use');

/** Quantities whose published decimal places a version may state. */
export const PLACED_QUANTITIES = [
  'breakingForce',
  'apparentStress',
  'tenacity',
  'linearDensity',
  'diameter',
  'outOfRoundness',
  'retention',
  'strengthHonesty',
] as const;

/** Parameters that the figures are computed with. */
export const methodParametersSchema = z
  .strictObject({
    areaFrom: z.enum(['circle', 'ellipse', 'solid']).nullable().describe('How the cross-section is found; null where none is needed'),
    reproducibilityPercent: z
      .number()
      .positive()
      .max(50)
      .nullable()
      .default(null)
      .describe(
        'What results of one line by other rigs, testers and days differ by, relative standard deviation [%]: where an edition is too small to tell, places rest on it; null where the method states none',
      ),
    places: z
      .partialRecord(z.enum(PLACED_QUANTITIES), z.int().min(0).max(6))
      .default({})
      .describe('Quantity → decimal places of its published figure'),
    settings: z
      .array(
        z.strictObject({
          name: words.describe('What is set'),
          value: words.describe('To what'),
          unit: z.string().max(20).describe('Unit symbol; empty where there is none'),
        }),
      )
      .max(40)
      .default([])
      .describe('Settings of the rig, e.g. gauge length and crosshead speed'),
  })
  .describe('Parameters that the figures use');

/** What a reader of the method's page reads. */
export const methodWordingSchema = z
  .strictObject({
    purpose: words.describe('What the method is for'),
    apparatus: z.array(words).max(40).describe('What is needed'),
    steps: z.array(words).min(1).max(60).describe('What is done, in order'),
    formulae: z
      .array(
        z.strictObject({
          figure: words.describe('Figure'),
          formula: words.describe('Formula'),
          where: words.describe('What its letters stand for'),
        }),
      )
      .max(40)
      .describe('Figures and how they are computed'),
    cautions: z.array(words).min(1).max(40).describe('A line under load whips when it parts: what to mind'),
    sources: z.array(words).max(40).describe('Published sources, or "common practice"'),
    changes: words.describe('What changed against the version before'),
  })
  .describe('The method in words');

export type MethodLimits = z.infer<typeof methodLimitsSchema>;
export type MethodParameters = z.infer<typeof methodParametersSchema>;
export type MethodWording = z.infer<typeof methodWordingSchema>;

const severity = z.enum(['blocks', 'held', 'note']);
/** What a version sets of its checks; what it leaves out is as the edition pinned it. */
export const checkSettingsSchema = z
  .record(
    z.string().max(60).describe('Code of the check'),
    z.strictObject({
      severity: severity.optional().describe('What a finding does, where the check allows another'),
      limits: z.record(z.string().max(60), z.number()).optional().describe('Name of a limit of the check → number in its unit'),
    }),
  )
  .describe('Code of a check → severity and limits');

export const methodRequest = z.strictObject({ slug, name: z.string().trim().min(1).max(120).describe('Name of the method') });

export const methodVersionRequest = z
  .strictObject({
    number: z.int().min(1).describe('One more than the version before'),
    effectiveFrom: z.iso.date().describe('First bench day'),
    effectiveUntil: z.iso.date().nullable().describe('Last bench day; null until the next version takes over'),
    limits: methodLimitsSchema,
    series: methodSeriesListSchema,
    parameters: methodParametersSchema,
    checks: checkSettingsSchema.default({}),
    wording: methodWordingSchema,
    isComparableWithPrevious: z.boolean().describe('Whether results may be compared with those of the version before'),
  })
  .refine((version) => version.effectiveUntil === null || version.effectiveUntil >= version.effectiveFrom, {
    message: 'The version ends before it starts; expected a day on or after effectiveFrom.',
    path: ['effectiveUntil'],
  });

export const methodVersionResponse = z.strictObject({
  id: z.uuid(),
  slug,
  name: z.string().describe('Name of the method'),
  number: z.int().describe('Version number'),
  effectiveFrom: z.iso.date().describe('First bench day'),
  effectiveUntil: z.iso
    .date()
    .nullable()
    .describe('Last bench day: as stated, or the day before the next version; null while neither is known'),
  limits: methodLimitsSchema,
  series: methodSeriesListSchema,
  parameters: methodParametersSchema,
  checks: checkSettingsSchema,
  wording: methodWordingSchema,
  isComparableWithPrevious: z.boolean().describe('Whether results may be compared with those of the version before'),
});

export const methodResponse = z.strictObject({
  slug,
  name: z.string().describe('Name of the method'),
  versions: z
    .array(
      z.strictObject({
        number: z.int().describe('Version number'),
        effectiveFrom: z.iso.date().describe('First bench day'),
        effectiveUntil: z.iso.date().nullable().describe('Last bench day; null while it is not known'),
        yields: z.array(z.enum(SERIES_KINDS)).describe('Kinds of its series, each once'),
      }),
    )
    .describe('Versions, oldest first'),
});
export const methodsResponse = z.strictObject({ items: z.array(methodResponse), nextCursor: z.string().nullable() });

/** Of a version in an address. */
export const versionParameter = z.coerce.number().int().min(1).max(999_999).describe('Number of the version, from 1');

export type MethodRequest = z.infer<typeof methodRequest>;
export type MethodVersionRequest = z.infer<typeof methodVersionRequest>;
export type MethodVersion = z.infer<typeof methodVersionResponse>;
export type MethodResponse = z.infer<typeof methodResponse>;

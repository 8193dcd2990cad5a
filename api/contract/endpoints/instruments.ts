/** Requests and answers of instruments and their calibrations. */
import { z } from 'zod';
import { benchCode } from '../bench-code.js';
import { formerSchema, supersedingReason } from '../former.js';
import { retiredSchema } from '../retired.js';
import { INSTRUMENT_KINDS } from '../instrument-kinds.js';

const entered = (what: string) =>
  z
    .strictObject({
      text: z.string().trim().min(1).max(40).describe('Number as entered'),
      unit: z.string().trim().min(1).max(10).describe('Unit symbol as entered'),
    })
    .describe(what);

const percent = (form: RegExp, message: string) => z.string().trim().max(20).regex(form, message);
const POSITIVE = /^(?=.*[1-9])\d{1,2}(\.\d{1,6})?$/;
const MOST_DAYS = 3653;

export const instrumentRequest = z.strictObject({
  code: benchCode,
  kind: z.enum(INSTRUMENT_KINDS).describe('What it is; decides what range and resolution are stated in'),
  name: z.string().trim().min(1).max(120).describe('What the bench calls it'),
  capacity: entered('Largest value that it measures; for an abrader the load of its tensioning weight'),
  resolution: entered('Smallest step that it shows'),
});

const calibrationFields = {
  certificate: z.string().trim().min(1).max(80).describe('Number of the certificate'),
  validFrom: z.iso.date().describe('First day'),
  validUntil: z.iso.date().describe('Last day'),
  correctionPercent: percent(
    /^[+-]?\d{1,2}(\.\d{1,6})?$/,
    'Expected a number of percent between -100 and 100 as text, e.g. "-0.2"',
  ).describe('Relative correction to add [%]'),
  expandedUncertaintyPercent: percent(POSITIVE, 'Expected a number of percent above 0 and below 100 as text, e.g. "0.5"').describe(
    'Relative expanded uncertainty U [%]',
  ),
  coverageFactor: percent(/^[1-9](\.\d{1,6})?$/, 'Expected a coverage factor of 1 or more and below 10 as text, e.g. "2"').describe(
    'Coverage factor k of U',
  ),
};
/** A period that a certificate can hold for. */
const withPeriod = <Shape extends z.ZodType<{ validFrom: string; validUntil: string }>>(schema: Shape) =>
  schema
    .refine(({ validFrom, validUntil }) => validUntil >= validFrom, {
      message: 'The certificate ends before it starts; expected a day on or after validFrom.',
      path: ['validUntil'],
    })
    .refine(({ validFrom, validUntil }) => (Date.parse(validUntil) - Date.parse(validFrom)) / 86_400_000 <= MOST_DAYS, {
      message: 'The certificate holds for more than ten years; expected less. Look at the year.',
      path: ['validUntil'],
    });
export const calibrationRequest = withPeriod(z.strictObject(calibrationFields));
export const calibrationCorrection = withPeriod(z.strictObject({ ...calibrationFields, reason: supersedingReason.optional() }));

const calibrationResponse = z.strictObject({
  certificate: z.string().describe('Number of the certificate'),
  validFrom: z.iso.date().describe('First day'),
  validUntil: z.iso.date().describe('Last day'),
  correctionPercent: z.string().describe('Relative correction to add [%]'),
  expandedUncertaintyPercent: z.string().describe('Relative expanded uncertainty U [%]'),
  coverageFactor: z.string().describe('Coverage factor k of U'),
});

const quantity = z.strictObject({
  text: z.string().describe('Number as entered'),
  unit: z.string().describe('Unit as entered'),
  value: z.string().describe('The same in SI, exact'),
  siUnit: z.string().describe('SI unit'),
});

export const instrumentResponse = z.strictObject({
  code: z.string().describe('Short bench code'),
  kind: z.enum(INSTRUMENT_KINDS).describe('What it is'),
  name: z.string().describe('What the bench calls it'),
  capacity: quantity.describe('Largest value that it measures'),
  resolution: quantity.describe('Smallest step that it shows'),
  calibrations: z.array(calibrationResponse).describe('Certificates, oldest first'),
  retired: retiredSchema.describe('Since when and why nothing is measured with it any more; it stays readable'),
  former: formerSchema.optional(),
  version: z.int().describe('Number in the ETag'),
});
export const instrumentsResponse = z.strictObject({ items: z.array(instrumentResponse), nextCursor: z.string().nullable() });

export type InstrumentRequest = z.infer<typeof instrumentRequest>;
export type InstrumentResponse = z.infer<typeof instrumentResponse>;
export type CalibrationRequest = z.infer<typeof calibrationRequest>;
export type CalibrationCorrection = z.infer<typeof calibrationCorrection>;

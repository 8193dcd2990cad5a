/** What one tester hands in, the same by JSON and by CSV. Numbers are exact decimal texts with the tester's unit; condition stands on the specimen. */
import { z } from 'zod';
import './input-words.js';
import { dateAtBench } from './bench-day.js';
import { narrowAboveWide, repeatedReadings, unitFault } from './reading-faults.js';

/** What each role measures: the dimension that its unit must have. */
export const READING_ROLES = {
  breakingForce: 'force',
  timeToBreak: 'time',
  wideDiameter: 'length',
  narrowDiameter: 'length',
  mass: 'mass',
  length: 'length',
} as const;
export type ReadingRole = keyof typeof READING_ROLES;

/** What each is called in a sentence. */
export const READING_WORDS: Readonly<Record<ReadingRole, string>> = {
  breakingForce: 'breaking force',
  timeToBreak: 'time to break',
  wideDiameter: 'widest diameter',
  narrowDiameter: 'narrowest diameter',
  mass: 'mass',
  length: 'length',
};

export const INVALID_REASONS = ['brokeAtGrip', 'slipped', 'mistied', 'handlingDamage', 'rigFault', 'outsideTimeToBreak'] as const;

/** Specimens that one submission may hold. */
export const MOST_SPECIMENS = 20_000;

/** Readings that one specimen may carry. */
export const MOST_READINGS = 400;

const decimal = z
  .string()
  .max(30)
  .regex(/^-?\d+(\.\d+)?$/, 'Expected a decimal number with a point, e.g. "161.4"')
  .describe('Decimal number as typed');

export const readingContent = z
  .strictObject({
    role: z.enum(Object.keys(READING_ROLES) as [ReadingRole, ...ReadingRole[]]).describe('What was read'),
    station: z.int().min(1).max(10_000).nullable().default(null).describe('Station along the specimen, for diameters'),
    value: decimal.refine((text) => !/^-|^0+(\.0+)?$/.test(text), 'Expected a number above zero'),
    unit: z.string().describe('Unit symbol as entered'),
  })
  .superRefine(({ role, unit }, context) => {
    const message = unitFault(READING_WORDS[role], unit, READING_ROLES[role]);
    if (message !== null) context.addIssue({ code: 'custom', path: ['unit'], message });
  });

export const specimenContent = z
  .strictObject({
    number: z.int().min(1).max(100_000).describe('Number within the submission'),
    condition: z
      .enum(['untreated', 'treated'])
      .default('untreated')
      .describe('Whether the specimen was knotted or abraded before the pull'),
    validity: z.enum(['valid', 'invalid']).default('valid'),
    invalidReason: z.enum(INVALID_REASONS).optional().describe('Why it does not count'),
    readings: z
      .array(readingContent)
      .min(1, 'Expected at least one reading')
      .max(MOST_READINGS, `Expected at most ${MOST_READINGS} readings; give each specimen its own number`),
  })
  .superRefine((specimen, context) => {
    if ((specimen.validity === 'invalid') !== (specimen.invalidReason !== undefined)) {
      context.addIssue({
        code: 'custom',
        path: ['invalidReason'],
        message: `An invalid specimen says why (${INVALID_REASONS.join(', ')}); a valid one does not. Give the reason, or leave it out`,
      });
    }
    for (const { index, message } of repeatedReadings(specimen.readings)) {
      context.addIssue({ code: 'custom', path: ['readings', index], message });
    }
    for (const { index, message } of narrowAboveWide(specimen.readings)) {
      context.addIssue({ code: 'custom', path: ['readings', index, 'value'], message });
    }
  });

export const submissionContent = z
  .strictObject({
    edition: z.string().max(60).describe('Slug of the edition'),
    spool: z.string().max(20).describe('Blind code of the spool'),
    method: z.string().max(60).describe('Slug of the method'),
    methodVersion: z.int().min(1),
    benchDay: z.iso.date().describe('Local date of the bench day'),
    zone: z
      .string()
      .default('UTC')
      .refine(isZone, 'Expected a time zone of the IANA database, e.g. Europe/Lisbon')
      .describe('Time zone of the bench'),
    instruments: z
      .array(z.string().max(40))
      .min(1, 'Expected the code of at least one instrument')
      .max(20)
      .describe('Codes of the instruments used'),
    ambient: z.strictObject({
      temperature: z.strictObject({ value: decimal, unit: z.enum(['°C', '°F']) }),
      humidityPercent: decimal.refine((text) => Number(text) >= 0 && Number(text) <= 100, 'Expected 0 to 100'),
    }),
    seenLabel: z.boolean().default(false).describe('Whether the tester has seen the unblinded label'),
    note: z.string().max(2000).optional(),
    fewerBecause: z
      .string()
      .trim()
      .min(10, 'Expected some words on why fewer specimens count, e.g. "The grip slipped from specimen 4 on"')
      .max(2000)
      .optional()
      .describe('Why fewer specimens count than the method asks for: a bench day that went badly is on record too'),
    specimens: z
      .array(specimenContent)
      .min(1, 'Expected at least one specimen')
      .max(MOST_SPECIMENS, `Expected at most ${MOST_SPECIMENS} specimens`),
  })
  .superRefine((content, context) => {
    const seen = new Set<number>();
    content.specimens.forEach(({ number }, i) => {
      if (seen.has(number))
        context.addIssue({
          code: 'custom',
          path: ['specimens', i, 'number'],
          message: `Specimen ${number} is there twice; give each its own number`,
        });
      seen.add(number);
    });
  });

export type SubmissionContent = z.infer<typeof submissionContent>;
export type SpecimenContent = SubmissionContent['specimens'][number];

function isZone(zone: string): boolean {
  try {
    return dateAtBench(new Date(0), zone) !== '';
  } catch {
    return false;
  }
}

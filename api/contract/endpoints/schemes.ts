/** What an edition or a division is ranked by. */
import { z } from 'zod';
import { slug } from '../slug.js';
import { words } from './editions.js';

/** What can be ranked, in the order in which it is listed. */
export const QUANTITIES = [
  'breakingForce',
  'diameter',
  'outOfRoundness',
  'linearDensity',
  'apparentStress',
  'retention',
  'strengthHonesty',
] as const;
export type QuantityKind = (typeof QUANTITIES)[number];

/** Unit that each is computed in. */
const UNIT_OF: Readonly<Record<QuantityKind, string>> = {
  breakingForce: 'N',
  diameter: 'mm',
  outOfRoundness: '%',
  linearDensity: 'tex',
  apparentStress: 'MPa',
  retention: '%',
  strengthHonesty: '%',
};

const schemeCategory = z.strictObject({
  code: slug,
  name: words.describe('Name on the page'),
  quantity: z.enum(QUANTITIES).describe('Quantity that is ranked'),
  method: slug.describe('Method whose readings are ranked'),
  series: slug.describe('Code of its series: the treated one of a retention, the force of a stress or an honesty'),
  section: z
    .strictObject({ method: slug.describe('Method that measures the diameter'), series: slug.describe('Code of its series') })
    .nullable()
    .default(null)
    .describe('Diameters that a stress is taken over; null of every other quantity'),
  unit: z.string().describe('SI unit'),
  places: z.int().min(0).max(6).describe('Decimal places of the published value'),
  tradeUnit: z.string().nullable().describe('Trade unit'),
  tradePlaces: z.int().min(0).max(6).nullable().describe('Decimal places in the trade unit'),
  direction: z.enum(['more', 'less']).describe('Whether more or less is better'),
  weight: z
    .string()
    .regex(/^\d+(\.\d+)?$/, 'Expected a decimal number with a point, e.g. "0.25"')
    .describe('Weight, a decimal'),
  conditions: words.describe('Conditions that define the category'),
  minimum: z
    .strictObject({
      specimens: z.int().min(1).max(1000).describe('Valid specimens'),
      testers: z.int().min(1).max(100).describe('Testers'),
      rigs: z.int().min(1).max(100).describe('Rigs'),
    })
    .default({ specimens: 1, testers: 1, rigs: 1 })
    .describe('Least evidence of a result that counts'),
});

export const schemeRules = z
  .strictObject({
    combine: z
      .enum(['sumOfPlaces', 'weightedSumOfPlaces', 'meanStandardScore', 'pairwiseWins'])
      .describe('How category results become a score'),
    countPlaces: z.enum(['beforeExclusions', 'afterExclusions']).describe('When category places are counted'),
    tieBreak: z.enum(['none', 'mostFirsts']).describe('Tie-break'),
    categories: z.array(schemeCategory).min(1).describe('Categories in order'),
  })
  .describe('Rules of the scheme');

/** Rules that can be followed; what is on record was held against the rules of its day. */
const soundRules = schemeRules.superRefine(({ categories }, context) => {
  categories.forEach(({ code, quantity, section, unit }, index) => {
    const refuse = (field: string, message: string) => {
      context.addIssue({ code: 'custom', path: ['categories', index, field], message });
    };
    if (categories.findIndex((other) => other.code === code) < index)
      refuse('code', `Category "${code}" is there twice; give each its own code.`);
    if ((quantity === 'apparentStress') !== (section !== null))
      refuse('section', 'A stress names the method and series of the diameters that it is taken over; no other quantity does.');
    if (unit !== UNIT_OF[quantity]) refuse('unit', `Found "${unit}", expected ${UNIT_OF[quantity]}: ${quantity} is computed in it.`);
  });
});

export const schemeRequest = z.strictObject({ slug, number: z.int().min(1), name: words, words, rules: soundRules });
export const schemeResponse = z.strictObject({ slug, number: z.int(), name: z.string(), words: z.string(), rules: schemeRules });
export const schemesResponse = z.strictObject({ items: z.array(schemeResponse), nextCursor: z.string().nullable() });

export type SchemeRules = z.infer<typeof schemeRules>;
export type SchemeCategory = SchemeRules['categories'][number];
export type SchemeRequest = z.infer<typeof schemeRequest>;

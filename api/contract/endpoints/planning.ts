import { z } from 'zod';
import { slug } from '../slug.js';

const percent = z.string().describe('Percent, a decimal');

export const planQuery = z.strictObject({
  category: slug.describe('Category of the scheme'),
  division: slug.optional().describe('Division whose scheme it is; needed where there are several'),
  difference: z.coerce.number().min(0.1).max(100).default(5).describe('Difference between two entries that is to be told [%]'),
});
export type PlanQuery = z.infer<typeof planQuery>;

const seasonDesign = z
  .strictObject({
    rigs: z.int(),
    testers: z.int(),
    submissions: z.int().describe('Of each entry'),
    specimens: z.int().describe('Of each submission'),
  })
  .describe('What a season is made of');
const expectedSeason = z
  .strictObject({
    width: z.string().describe('Mean number of places in a place interval'),
    couldBeFirst: z.string().describe('Mean number of entries that could be first'),
    powerPercent: percent.describe(
      'Chance to tell two entries apart that differ by as much as was asked, at the critical value of the whole table',
    ),
  })
  .describe('What such a season would show, on average over simulated ones');

export const PLANNED_CHANGES = ['rig', 'tester', 'submission', 'specimens'] as const;

export const planResponse = z.strictObject({
  edition: slug.describe('Slug of the edition'),
  category: slug.describe('Category of the scheme'),
  entries: z.int().describe('Entries with a result that counts'),
  differencePercent: percent,
  season: seasonDesign.describe('The season as it is: rigs and testers as they took part, the usual numbers of submissions and specimens'),
  expected: expectedSeason,
  alternatives: z
    .array(
      z.strictObject({
        more: z
          .enum(PLANNED_CHANGES)
          .describe('What there is more of: one rig, one tester, one submission of each entry, twice the specimens'),
        season: seasonDesign,
        expected: expectedSeason,
        narrowerPercent: percent.describe('By how much its place intervals are narrower; below 0 where they are wider'),
        standardErrorPercent: percent.describe('Of that, as so many simulated seasons leave it'),
      }),
    )
    .describe('What more of one thing would buy'),
  needed: z
    .array(
      z.strictObject({
        submissions: z.int().describe('Of each entry'),
        specimens: z.int().nullable().describe('Fewest of each submission that tell the difference with 80 %; null where 64 do not'),
        powerPercent: percent.describe('What is reached with them, or with 64'),
      }),
    )
    .describe('Specimens and submissions that tell the difference, with the rigs and testers that took part'),
});
export type Plan = z.infer<typeof planResponse>;

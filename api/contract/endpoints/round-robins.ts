/** Requests and answers of round robins. */
import { z } from 'zod';
import { benchCode } from '../bench-code.js';
import { roundRobinReportSchema } from '../documents/round-robins-document.js';
import { slug } from '../slug.js';

const words = (most: number) => z.string().trim().min(1, 'Say it in words').max(most);

export const roundRobinRequest = z.strictObject({
  slug: slug.describe('Readable identifier; never changes'),
  name: words(120),
  words: words(2000).describe('What is looked for'),
  method: slug.describe('Slug of the method that it is pulled by'),
  spools: z.array(z.string().trim().max(20)).min(1).max(30).describe('Blind codes, one a level'),
  specimens: z.int().min(2).max(50).describe('Specimens that each tester pulls of each spool'),
  testers: z.array(z.uuid()).min(2).max(50).describe('Accounts of those who take part'),
});
export const cellRequest = z.strictObject({
  spool: z.string().trim().max(20).describe('Blind code'),
  instrument: benchCode.describe('Code of the rig'),
  readings: z
    .array(z.strictObject({ text: z.string().trim().min(1).max(40), unit: z.string().trim().min(1).max(10) }))
    .min(1)
    .max(50)
    .describe('Breaking forces as displayed, one a specimen'),
});
export const roundRobinResponse = z
  .strictObject({
    state: z.enum(['planned', 'open', 'closed']),
    version: z.int(),
    yourNumber: z.int().nullable().describe('Under which number the others see you'),
    names: z.array(z.strictObject({ number: z.int(), name: z.string() })).describe('For editors and reviewers; empty for testers'),
    report: roundRobinReportSchema.describe('A tester sees the own readings alone until it is closed'),
  })
  .describe('A round robin');
export const roundRobinsResponse = z.strictObject({
  items: z.array(z.strictObject({ slug, name: z.string(), method: slug, state: z.enum(['planned', 'open', 'closed']) })),
  nextCursor: z.null(),
});

export type RoundRobinRequest = z.infer<typeof roundRobinRequest>;
export type CellRequest = z.infer<typeof cellRequest>;

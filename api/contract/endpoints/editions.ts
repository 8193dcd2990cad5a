import { z } from 'zod';
import { amendmentSchema } from '../amendment.js';
import { divisionRuleSchema, isTaken } from '../division.js';
import { slug } from '../slug.js';

export const words = z.string().trim().min(1).max(2000);
const version = z.int().describe('Number in the ETag');

const numbered = z.strictObject({ slug, number: z.int().min(1) });
export const plannedDivision = z
  .strictObject({
    slug: slug
      .refine((name) => !isTaken(name), { message: 'An edition has something else at this address; take another name' })
      .describe('Its part of addresses; a season that goes on with a division calls it the same'),
    name: words.describe('Name on the page'),
    takes: divisionRuleSchema,
    scheme: numbered.describe('Scheme that it is ranked by'),
  })
  .describe('A division as it is planned: which lines it takes, and the scheme that it is ranked by');
const editionFields = {
  name: words,
  scheme: numbered.optional().describe('Scheme, of an edition in which everything is compared with everything'),
  divisions: z
    .array(plannedDivision)
    .min(2)
    .max(50)
    .refine((divisions) => new Set(divisions.map((division) => division.slug)).size === divisions.length, {
      message: 'Two divisions have the same slug; give each its own',
    })
    .optional()
    .describe('Instead of a scheme: what may be compared, each by itself, in the order in which they are shown'),
  opensOn: z.iso.date(),
  closesOn: z.iso.date(),
  previous: slug.nullable().describe('Edition that movement is told against'),
  methods: z.array(numbered).min(1).max(100).describe('Method versions to pin'),
};
interface Ranked {
  readonly scheme?: unknown;
  readonly divisions?: unknown;
}
const rankedOnce = ({ scheme, divisions }: Ranked) => scheme === undefined || divisions === undefined;
const RANKED_TWICE = { message: 'Found a scheme and divisions; a division has its own scheme. Send one of the two.', path: ['divisions'] };
export const editionRequest = z
  .strictObject({ slug, ...editionFields })
  .refine(({ scheme, divisions }) => scheme !== undefined || divisions !== undefined, {
    message: 'Nothing to rank by; send a scheme, or divisions that each have one',
    path: ['scheme'],
  })
  .refine(rankedOnce, RANKED_TWICE)
  .refine((edition) => edition.closesOn >= edition.opensOn, {
    message: 'The edition closes before it opens; expected the day on which it opens, or a later one',
    path: ['closesOn'],
  });

export const editionChange = z
  .strictObject(editionFields)
  .partial()
  .refine(rankedOnce, RANKED_TWICE)
  .refine((change) => Object.keys(change).length > 0, { message: 'Nothing to change; send at least one field.' });

const variants = z.array(slug).min(1).max(2000);
export const entriesRequest = z.strictObject({ variants });
export const amendmentRequest = z
  .strictObject({
    reason: words.describe('Why, in words that readers see'),
    variants: variants.optional().describe('Further entries'),
    methods: z.array(numbered).min(1).max(100).optional().describe('Versions of methods that were forgotten'),
    closesOn: z.iso.date().optional().describe('A later closing day'),
  })
  .refine(({ reason: _, ...changes }) => Object.keys(changes).length > 0, {
    message: 'Nothing to amend; send variants, methods or closesOn.',
  });
export const exclusionRequest = z.strictObject({
  variant: slug,
  reasonCode: z.enum(['notObtainable', 'labelInDoubt', 'duplicate', 'makersRequestRefused', 'interest']).describe('Why'),
  words: words.describe('Why, in words that readers see'),
  effect: z.enum(['closedUp', 'shownUnplaced']).describe('Whether the others move up'),
});

export const overrulingRequest = z.strictObject({
  variant: slug.describe('Entry'),
  division: slug.describe('Division that it goes into, whatever the rule says'),
  reason: words.describe('Why, in words that readers see'),
});

export const editionResponse = z.strictObject({
  slug,
  name: z.string(),
  state: z.enum(['planned', 'open', 'closed', 'published']),
  scheme: numbered.optional().describe('Scheme; none of an edition with several divisions, which each have one'),
  divisions: z.array(plannedDivision).optional().describe('What is compared by itself; none where everything is compared with everything'),
  opensOn: z.iso.date(),
  closesOn: z.iso.date(),
  previous: slug.nullable(),
  blindKeyDigest: z.string().nullable().describe('SHA-256 of the key of blind codes, fixed at opening'),
  closedOn: z.iso.date().nullable().describe('When it was closed'),
  entries: z.int().describe('Number of entries'),
  methods: z.array(numbered).describe('Method versions that are pinned, by slug'),
  amendments: z.array(amendmentSchema).describe('What it took besides while it was open, oldest first'),
  version,
});
export const workingEditionsResponse = z.strictObject({ items: z.array(editionResponse), nextCursor: z.string().nullable() });

export const commitmentsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      openedOn: z.iso.date().describe('Day from which it holds'),
      blindKeyDigest: z.string().describe('SHA-256 of the key of blind codes; the key comes with the release'),
    }),
  ),
  nextCursor: z.string().nullable(),
});

export type EditionRequest = z.infer<typeof editionRequest>;
export type EntriesRequest = z.infer<typeof entriesRequest>;
export type ExclusionRequest = z.infer<typeof exclusionRequest>;
export type OverrulingRequest = z.infer<typeof overrulingRequest>;
export type PlannedDivision = z.infer<typeof plannedDivision>;
export type EditionChange = z.infer<typeof editionChange>;
export type AmendmentRequest = z.infer<typeof amendmentRequest>;

/** Requests and answers of what the house says: who it is, caveats, replies of makers. */
import { z } from 'zod';
import { CONSTRUCTIONS } from '../constructions.js';
import { shownName } from '../display-name.js';
import { slug } from '../slug.js';

const MOST = 2000;
const words = z.string().trim().min(1, 'Say it in words').max(MOST);

export const housePersonSchema = z
  .strictObject({ name: shownName(120).describe('As readers see it'), does: z.string().trim().min(1).max(200).describe('What for') })
  .describe('A person of the house');

/** What a house says of itself before it publishes; in the order in which readers get it. */
export const HOUSE_PARTS = ['contact', 'people', 'funding', 'interests', 'rightOfReply'] as const;
export type HousePart = (typeof HOUSE_PARTS)[number];

const house = {
  contact: words.nullable().describe('How to reach the house'),
  people: z.array(housePersonSchema).max(100).describe('Who does what'),
  funding: words.nullable().describe('Who pays for it'),
  interests: words.nullable().describe('Ties to makers and sellers, or that there are none'),
  rightOfReply: words.nullable().describe('How a maker is heard, and where a reply goes'),
};
export const houseStatementRequest = z.strictObject(house);
export const houseStatementResponse = z
  .strictObject({
    ...house,
    number: z.int().describe('Counted from 1; 0 while nothing is said'),
    at: z.iso.datetime().nullable().describe('Since when it stands; null while nothing is said'),
    missing: z.array(z.enum(HOUSE_PARTS)).describe('What has to be said before a first publication'),
  })
  .describe('Who publishes, as the house says it of itself; the newest stands, and goes into the next release');

const about = z
  .discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('construction'), slug: z.enum(CONSTRUCTIONS).describe('How the lines are made') }),
    z.strictObject({ kind: z.literal('line'), slug: slug.describe('Slug of the line') }),
    z.strictObject({ kind: z.literal('variant'), slug: slug.describe('Slug of the variant') }),
  ])
  .describe('What a caveat is about: every line of a construction, a line in all its variants, or one variant');

export const remarkRequest = z
  .discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('caveat'),
      about,
      words: words.describe('What no figure settles, as readers see it'),
    }),
    z.strictObject({
      kind: z.literal('reply'),
      variant: slug.describe('Slug of the variant'),
      edition: slug.describe('Slug of the edition whose figures it answers'),
      category: slug.nullable().default(null).describe('Code of the category that it answers; null for all figures'),
      signedBy: shownName(120).describe('Who replies, e.g. a person and the maker'),
      words: words.describe('The reply, word by word'),
    }),
  ])
  .describe('A caveat of an editor, signed with the display name; or the reply of a maker');
export const remarkSuccessorRequest = z.strictObject({
  words: words.describe('What it says from now on'),
  reason: words.describe('Why the former is superseded'),
});
export const remarkEndRequest = z.strictObject({ reason: words.describe('Why it stands no more') });

export const remarkResponse = z
  .strictObject({
    id: z.uuid(),
    kind: z.enum(['caveat', 'reply']),
    about: z
      .strictObject({ kind: z.enum(['construction', 'line', 'variant']), slug: z.string() })
      .describe('What it is about: a construction, a line or a variant'),
    edition: slug.nullable().describe('Edition whose figures a reply answers'),
    category: slug.nullable().describe('Category that a reply answers; null for all, and of a caveat'),
    words: z.string(),
    signedBy: z.string().describe('Name that readers see under it'),
    at: z.iso.datetime().describe('Since when it stands'),
    supersedes: z.uuid().nullable().describe('Id of what it took the place of'),
    end: z.strictObject({ reason: z.string(), at: z.iso.datetime() }).nullable().describe('Why it stands no more; null while it does'),
  })
  .describe('Words that stand beside figures; never changed, only superseded or ended');
export const remarksResponse = z.strictObject({
  items: z.array(remarkResponse).describe('Those that stand first, newest first'),
  nextCursor: z.null(),
});
export const remarkParameter = z.uuid().describe('Id of the remark');

export type HouseStatementRequest = z.infer<typeof houseStatementRequest>;
export type HouseStatementResponse = z.infer<typeof houseStatementResponse>;
export type RemarkRequest = z.infer<typeof remarkRequest>;
export type RemarkResponse = z.infer<typeof remarkResponse>;

/** What is not said yet. */
export const missingOf = (said: HouseStatementRequest | null): HousePart[] =>
  HOUSE_PARTS.filter((part) => said === null || said[part] === null || said[part].length === 0);

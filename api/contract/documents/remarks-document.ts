/** Words that stand beside figures, as a release tells them. */
import { z } from 'zod';
import { date, heading, slug } from './published-fields.js';

export const publishedRemarkSchema = z
  .strictObject({
    kind: z.enum(['caveat', 'reply']).describe('What no figure settles, in the words of an editor; or what a maker replies'),
    about: z
      .strictObject({ kind: z.enum(['construction', 'line', 'variant']), slug: z.string().describe('Slug, or code of the construction') })
      .describe('What it is about'),
    category: slug.nullable().describe('Code of the category that a reply answers; null for all figures, and of a caveat'),
    words: z.string().describe('Word by word'),
    signedBy: z.string().describe('Who says it'),
    on: date.describe('Since when it stands'),
    variants: z.array(slug).describe('Entries of the edition that it touches'),
  })
  .describe('Words beside figures, dated and signed');

export const remarksDocumentSchema = z
  .strictObject({ ...heading, items: z.array(publishedRemarkSchema).describe('Caveats, then replies; oldest first') })
  .describe('Caveats of the editors and replies of makers');

export type PublishedRemark = z.infer<typeof publishedRemarkSchema>;
export type RemarksDocument = z.infer<typeof remarksDocumentSchema>;

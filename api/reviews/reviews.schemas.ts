import { z } from 'zod';
import { submissionResponse } from '../submissions/submission-views.read-model.js';
import { DECISIONS } from './review.js';

const words = (most: number) => z.string().trim().min(1, 'Say it in words').max(most);

const settingAside = z.strictObject({
  specimen: z.int().min(1).describe('Number of the specimen'),
  reason: words(1000).describe('Why it does not count'),
});
const resolution = z.strictObject({
  finding: z.uuid().describe('Id of the finding'),
  words: words(2000).describe('Why the submission stands in spite of it'),
});
const question = z.strictObject({
  specimens: z.array(z.int().min(1)).max(500).describe('Numbers of the specimens to look at'),
  question: words(2000).describe('The question; never how far off a specimen is, or in which direction'),
});

export const reviewRequest = z
  .strictObject({
    decision: z.enum(DECISIONS).describe('accepted, returned or refused'),
    reason: words(2000).nullable().default(null).describe('Why; needed to refuse'),
    setAside: z.array(settingAside).max(10_000).default([]).describe('Specimens that do not count; only on accepting'),
    resolutions: z.array(resolution).max(200).default([]).describe('Answers to findings; only on accepting, every held finding needs one'),
    query: question.nullable().default(null).describe('Question to the tester; needed to return'),
  })
  .superRefine((review, context) => {
    const refuse = (path: string, message: string) => {
      context.addIssue({ code: 'custom', path: [path], message });
    };
    if (review.decision === 'returned' && review.query === null)
      refuse('query', 'Returning asks a question: name the specimens and write the question.');
    if (review.decision !== 'returned' && review.query !== null)
      refuse('query', 'A question goes with decision "returned" only; leave it out.');
    if (review.decision === 'refused' && review.reason === null) refuse('reason', 'Refusing needs a reason in words.');
    if (review.decision === 'accepted') return;
    if (review.setAside.length > 0) refuse('setAside', 'Specimens are set aside on accepting only; leave it out.');
    if (review.resolutions.length > 0) refuse('resolutions', 'Findings are answered on accepting only; leave it out.');
  });

export const resolutionRequest = z.strictObject({ words: words(2000).describe('Why the submission stands in spite of it') });
export const findingParameter = z.uuid().describe('Id of the finding');
export const withdrawalRequest = z.strictObject({ reason: words(2000).describe('Why it leaves the results') });

export const queueQuery = z.strictObject({
  limit: z.coerce.number().int().min(1).max(100).default(20).describe('Most items in the answer'),
  cursor: z.uuid().optional().describe('nextCursor of the page before'),
});
export const queueResponse = z.strictObject({
  items: z.array(submissionResponse).describe('Submitted ones of other testers, oldest first'),
  nextCursor: z.string().nullable().describe('Cursor of the next page; null on the last'),
});

export const queryResponse = z.strictObject({
  id: z.uuid().describe('Id of the query'),
  submission: z.string().describe('Reference of the submission'),
  revision: z.int().describe('Revision it was asked on'),
  specimens: z.array(z.int()).describe('Specimens to look at'),
  question: z.string().describe('The question'),
  askedAt: z.iso.datetime().describe('When it was asked'),
  answer: z.string().nullable().describe('Answer of the tester; null while open'),
  answeredAt: z.iso.datetime().nullable().describe('When it was answered'),
});
export const queriesQuery = z.strictObject({ cursor: z.uuid().optional().describe('nextCursor of the page before') });
export const queryParameter = z.uuid().describe('Id of the query');
export const queriesResponse = z.strictObject({
  items: z.array(queryResponse),
  nextCursor: z.string().nullable().describe('Cursor of the next page; null on the last'),
});
export const answerRequest = z.strictObject({ answer: words(4000).describe('Answer to the question') });

export type ReviewRequest = z.infer<typeof reviewRequest>;
export type QueryResponse = z.infer<typeof queryResponse>;

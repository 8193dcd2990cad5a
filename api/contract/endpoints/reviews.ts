import { z } from 'zod';
import { pageCursor, pageLimit } from '../page-query.js';
import { submissionResponse } from './submissions.js';
import { SUBMISSION_ACTIONS } from '../submission-actions.js';
import { ROLES } from '../roles.js';
import { SUBMISSION_STATES } from '../submission-states.js';
import { DECISIONS, QUESTION_KINDS } from '../decisions.js';

/** Hours for which a claimed review is kept from others. */
export const CLAIM_HOURS = 2;

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
  kind: z.enum(QUESTION_KINDS).default('other').describe('What the question is about'),
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

export const closureRequest = z.strictObject({ reason: words(2000).describe('Why it is closed without a further revision') });
export const resolutionRequest = z.strictObject({ words: words(2000).describe('Why the submission stands in spite of it') });
export const findingParameter = z.uuid().describe('Id of the finding');

export const queueQuery = z.strictObject({
  limit: pageLimit({ usual: 20, most: 100 }),
  cursor: pageCursor,
});
export const queueResponse = z.strictObject({
  items: z.array(submissionResponse).describe('Submitted ones of other testers, oldest first'),
  nextCursor: z.string().nullable().describe('Cursor of the next page; null on the last'),
});

export const queryResponse = z.strictObject({
  id: z.uuid().describe('Id of the query'),
  submission: z.string().describe('Reference of the submission'),
  revision: z.int().describe('Revision it was asked on'),
  kind: z.enum(QUESTION_KINDS).describe('What the question is about'),
  specimens: z.array(z.int()).describe('Specimens to look at'),
  question: z.string().describe('The question'),
  askedAt: z.iso.datetime().describe('When it was asked'),
  answer: z.string().nullable().describe('Answer of the tester; null while open'),
  answeredAt: z.iso.datetime().nullable().describe('When it was answered'),
});
export const queriesQuery = z.strictObject({
  limit: pageLimit(),
  cursor: pageCursor,
});
export const queryParameter = z.uuid().describe('Id of the query');
export const queriesResponse = z.strictObject({
  items: z.array(queryResponse),
  nextCursor: z.string().nullable().describe('Cursor of the next page; null on the last'),
});
export const answerRequest = z.strictObject({ answer: words(4000).describe('Answer to the question') });

export const judgementRequest = z.strictObject({
  verdict: z.enum(['plausible', 'doubtful']).describe('Whether the readings by themselves are plausible'),
  words: words(2000).describe('Why'),
});
export const earlierResultsResponse = z.strictObject({
  items: z
    .array(
      z.strictObject({
        reference: z.string(),
        edition: z.string(),
        benchDay: z.iso.date(),
        tester: z.string().describe('Display name'),
        instruments: z.array(z.string()).describe('Bench codes'),
        figures: z.record(z.string(), z.unknown()).describe('Figures of the submission'),
      }),
    )
    .describe('Accepted submissions of the same variant by the same method, newest first'),
  nextCursor: z.null(),
});
const actionName = z.enum(Object.keys(SUBMISSION_ACTIONS) as [keyof typeof SUBMISSION_ACTIONS, ...(keyof typeof SUBMISSION_ACTIONS)[]]);
export const possibleActionsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      action: actionName,
      does: z.string(),
      isPossible: z.boolean(),
      why: z.string().nullable().describe('Why not, or what it needs'),
      counts: z.record(z.string(), z.int()),
    }),
  ),
  nextCursor: z.null(),
});
export const actionTableResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      action: actionName,
      method: z.enum(['GET', 'POST', 'PUT', 'DELETE']),
      path: z.string(),
      roles: z.array(z.enum(ROLES)),
      whose: z.enum(['own', 'others', 'any']).describe('Whose submissions it is for'),
      states: z.array(z.enum(SUBMISSION_STATES)),
      does: z.string(),
    }),
  ),
  nextCursor: z.null(),
});
export const changesResponse = z.strictObject({
  items: z
    .array(
      z.strictObject({
        pointer: z.string().describe('RFC 6901; specimens by their numbers'),
        before: z.string().nullable(),
        after: z.string().nullable(),
      }),
    )
    .describe('What the revision says otherwise than the one before'),
  nextCursor: z.null(),
});
export const revisionParameter = z.coerce.number().int().min(2).describe('Number of the revision');

export type ReviewRequest = z.infer<typeof reviewRequest>;
export type QueriesQuery = z.infer<typeof queriesQuery>;
export type QueryResponse = z.infer<typeof queryResponse>;

/** Requests and answers of proposals. */
import { z } from 'zod';
import { pageCursor, pageLimit } from '../page-query.js';

const reason = z.string().trim().min(1, 'Say it in words').max(2000).describe('Why');

/** An open one waits for another person. */
export const PROPOSAL_STATES = ['open', 'carriedOut', 'declined', 'calledOff'] as const;

export const proposalRequest = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('withdrawal'), submission: z.string().max(80).describe('Reference'), reason }),
  z.strictObject({
    kind: z.literal('reidentification'),
    spool: z.string().max(20).describe('Blind code'),
    variant: z.string().max(60).describe('Slug of the variant that it is'),
    reason,
  }),
]);
export const proposalResponse = z
  .strictObject({
    id: z.uuid(),
    kind: z.enum(['withdrawal', 'reidentification']),
    object: z.string().describe('Reference of the submission, or blind code of the spool'),
    variant: z.string().nullable().describe('Slug of the variant that the spool is said to be'),
    reason: z.string(),
    by: z.string().describe('Display name'),
    at: z.iso.datetime(),
    state: z.enum(PROPOSAL_STATES),
    end: z
      .strictObject({ reason: z.string(), by: z.string().describe('Display name'), at: z.iso.datetime() })
      .nullable()
      .describe('Why it will not be carried out'),
  })
  .describe('What one person proposes and another carries out');
export const proposalsResponse = z.strictObject({
  items: z.array(proposalResponse).describe('Newest first'),
  nextCursor: z.string().nullable(),
});
export const proposalsQuery = z.strictObject({
  state: z.enum(PROPOSAL_STATES).optional().describe('Only those in this state'),
  limit: pageLimit({ usual: 200 }),
  cursor: pageCursor,
});
export const proposalParameter = z.uuid().describe('Id of the proposal');
export const proposalEndRequest = z.strictObject({ reason });
export const secondedRequest = z.strictObject({ proposal: z.uuid().describe('Id of the proposal of another person that is carried out') });

export type ProposalRequest = z.infer<typeof proposalRequest>;
export type ProposalResponse = z.infer<typeof proposalResponse>;
export type ProposalState = (typeof PROPOSAL_STATES)[number];
export type ProposalsQuery = z.infer<typeof proposalsQuery>;

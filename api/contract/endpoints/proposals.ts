/** Requests and answers of proposals. */
import { z } from 'zod';

const reason = z.string().trim().min(1, 'Say it in words').max(2000).describe('Why');

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
    isCarriedOut: z.boolean(),
  })
  .describe('What one person proposes and another carries out');
export const proposalsResponse = z.strictObject({ items: z.array(proposalResponse).describe('Newest first'), nextCursor: z.null() });
export const secondedRequest = z.strictObject({ proposal: z.uuid().describe('Id of the proposal of another person that is carried out') });

export type ProposalRequest = z.infer<typeof proposalRequest>;
export type ProposalResponse = z.infer<typeof proposalResponse>;

/** Where an order stands that a worker carries out. */
import { z } from 'zod';

export const orderStateSchema = z.strictObject({
  state: z.enum(['waiting', 'running', 'retrying', 'done', 'calledOff', 'failed']),
  attempts: z.int().describe('How often it was taken up'),
  words: z.string().nullable().describe('Why the last attempt failed, or what one that is done has to say; null where there is nothing'),
  nextAttemptAt: z.iso.datetime().nullable().describe('When it may be taken up next; null when it is not waiting'),
});
export type OrderState = z.infer<typeof orderStateSchema>;

export const openOrdersResponse = z.strictObject({
  items: z.array(
    orderStateSchema.extend({
      queue: z.string(),
      order: z.unknown().describe('What was ordered'),
      orderedAt: z.iso.datetime(),
    }),
  ),
  nextCursor: z.string().nullable(),
});
export type OpenOrder = z.infer<typeof openOrdersResponse>['items'][number];

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
/** Backups are orders as well: what each said of itself, and when the next is made. */
export const backupsResponse = z.strictObject({
  times: z.string().nullable().describe('When one is made: minute, hour, day, month, weekday as in cron, UTC; null where none is'),
  nextAt: z.iso.datetime().nullable().describe('When the next is made; null where none is'),
  items: z
    .array(orderStateSchema.extend({ orderedAt: z.iso.datetime(), endedAt: z.iso.datetime().nullable().describe('Null until it ended') }))
    .describe('Of the last week, newest first; each is read through after it was made, and the words say so'),
  nextCursor: z.null(),
});
export type OpenOrder = z.infer<typeof openOrdersResponse>['items'][number];

/** What an admin sees of the machine room: backups. Orders to the worker stand in order-state.ts. */
import { z } from 'zod';
import { orderStateSchema } from '../order-state.js';

export const backupsResponse = z.strictObject({
  times: z.string().nullable().describe('When one is made: minute, hour, day, month, weekday as in cron, UTC; null where none is'),
  nextAt: z.iso.datetime().nullable().describe('When the next is made; null where none is'),
  items: z
    .array(orderStateSchema.extend({ orderedAt: z.iso.datetime(), endedAt: z.iso.datetime().nullable().describe('Null until it ended') }))
    .describe('Of the last week, newest first; each is read through after it was made, and the words say so'),
  nextCursor: z.null(),
});

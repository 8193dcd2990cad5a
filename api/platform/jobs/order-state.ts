import type { JobWithMetadata } from 'pg-boss';
import { z } from 'zod';

export const orderStateSchema = z.strictObject({
  state: z.enum(['waiting', 'running', 'retrying', 'done', 'calledOff', 'failed']),
  attempts: z.int().describe('How often it was taken up'),
  words: z.string().nullable().describe('Why the last attempt failed; null when none did'),
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

const STATES = {
  created: 'waiting',
  retry: 'retrying',
  active: 'running',
  completed: 'done',
  cancelled: 'calledOff',
  failed: 'failed',
} as const;

/** An order that was put on record a moment ago. */
export const orderPlaced = (nextAttemptAt: Date): OrderState => ({
  state: 'waiting',
  attempts: 0,
  words: null,
  nextAttemptAt: nextAttemptAt.toISOString(),
});

/** What the queue knows of an order, in our words. */
export function stateOfOrder({ state, retryCount, output, startAfter }: JobWithMetadata): OrderState {
  return {
    state: STATES[state],
    attempts: ['created', 'cancelled'].includes(state) ? retryCount : retryCount + 1,
    words: wordsIn(output),
    nextAttemptAt: state === 'created' || state === 'retry' ? startAfter.toISOString() : null,
  };
}

/** The queue keeps the message of a failure, or of its own finding that a worker fell silent. */
function wordsIn(output: object | null): string | null {
  const { message, value } = (output ?? {}) as { message?: string; value?: { message?: string } };
  return message ?? value?.message ?? null;
}

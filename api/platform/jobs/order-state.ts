import type { JobWithMetadata } from 'pg-boss';
import type { OrderState } from '../../contract/order-state.js';

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

/** The queue keeps the message of a failure, or of its own finding that a worker fell silent, or what the work said of itself. */
function wordsIn(output: object | null): string | null {
  const { message, value } = (output ?? {}) as { message?: string; value?: string | { message?: string } };
  return message ?? (typeof value === 'string' ? value : value?.message) ?? null;
}

/** Orders to the worker. */
import type { OrderQueue } from '../platform/jobs/jobs.js';

/** Its key is the id of the webhook: one waits beside one at work. */
export const TELL_WEBHOOK: OrderQueue = { name: 'webhook-delivery', policy: 'short' };

export interface TellWebhookOrder {
  readonly id: string;
}

const FIRST_S = 5;
const EACH_TIME = 4;
const LONGEST_S = 6 * 3600;

/** [s] How long to wait after so many failures in a row: 5 s, 20 s, 80 s, … at most six hours. */
export const waitAfter = (failures: number): number => Math.min(FIRST_S * EACH_TIME ** (failures - 1), LONGEST_S);

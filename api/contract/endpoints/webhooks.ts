import { z } from 'zod';
import { pageCursor, pageLimit } from '../page-query.js';
import { CHANGE_KINDS, publicChangeSchema } from '../documents/changes.js';

/** So long every attempt may fail before nothing more is tried. */
export const PAUSED_AFTER_DAYS = 3;

export const webhookRequest = z.strictObject({
  address: z
    .url({ protocol: /^https?$/ })
    .max(2000)
    .describe('Address that events are posted to; https, unless the operator lets it be a near one'),
  kinds: z.array(z.enum(CHANGE_KINDS)).min(1).max(20).describe('Kinds of changes that it is told of'),
  note: z.string().trim().min(1).max(200).describe('Whose it is and what for'),
});

export const webhookSchema = z
  .strictObject({
    id: z.uuid().describe('Id of the webhook'),
    address: z.string().describe('Address that events are posted to'),
    kinds: z.array(z.enum(CHANGE_KINDS)).describe('Kinds of changes that it is told of'),
    note: z.string().describe('Whose it is and what for'),
    createdAt: z.iso.datetime().describe('Since when, RFC 3339 in UTC'),
    toldUpTo: z.int().describe('Number of the last change that was told, or is none of its kinds'),
    failures: z.int().describe('Attempts that failed since the last that did not'),
    failingSince: z.iso.datetime().nullable().describe('Since when every attempt failed; null where the last did not'),
    pausedAt: z.iso.datetime().nullable().describe('Since when it is told nothing; null while it is'),
    pausedBecause: z.string().nullable().describe('Why it is paused, a sentence'),
  })
  .describe('An address that is told of changes');

export const webhooksResponse = z.strictObject({
  items: z.array(webhookSchema).describe('Oldest first'),
  nextCursor: z.string().nullable().describe('Always null'),
});

export const newWebhookResponse = webhookSchema.extend({
  secret: z.string().describe('What its signatures are checked with, whsec_ and base64 (Standard Webhooks); shown this once'),
});

export const webhookPauseRequest = z.strictObject({ reason: z.string().trim().min(1).max(200).describe('Why, a sentence') });

export const webhookReplayRequest = z.strictObject({
  after: z
    .int()
    .min(0)
    .describe('Number of the last change that need not be told again; every later one is told anew, under the same webhook-id'),
});

export const webhookDeliverySchema = z
  .strictObject({
    id: z.uuid().describe('Id of the attempt'),
    change: z.int().describe('Number of the change'),
    kind: z.enum(CHANGE_KINDS).describe('Kind of the change'),
    at: z.iso.datetime().describe('When it was tried, RFC 3339 in UTC'),
    isDelivered: z.boolean().describe('Whether the address answered with 2xx in time'),
    status: z.int().nullable().describe('Status of the answer; null where none came'),
    words: z.string().describe('What happened, a sentence'),
    tookMs: z.int().describe('How long it took [ms]'),
  })
  .describe('One attempt to tell a webhook of a change');

export const webhookDeliveriesResponse = z.strictObject({
  items: z.array(webhookDeliverySchema).describe('Newest first'),
  nextCursor: z.string().nullable().describe('What to send as cursor for the items that follow; null at the end'),
});

export const webhookDeliveriesQuery = z.strictObject({
  limit: pageLimit({ usual: 100 }),
  cursor: pageCursor,
});

/** What is posted: the envelope of the Standard Webhooks conventions about the change as GET /v1/changes tells it. */
export const webhookEventSchema = z
  .strictObject({
    type: z.enum(CHANGE_KINDS).describe('Kind of the change'),
    timestamp: z.iso.datetime().describe('When it became true, RFC 3339 in UTC'),
    data: publicChangeSchema.describe('The change'),
  })
  .describe('An event as it is posted to a webhook');

export const webhookParameter = z.uuid().describe('Id of the webhook');

export type WebhookRequest = z.infer<typeof webhookRequest>;
export type WebhookResponse = z.infer<typeof webhookSchema>;
export type WebhookDelivery = z.infer<typeof webhookDeliverySchema>;
export type WebhookDeliveriesQuery = z.infer<typeof webhookDeliveriesQuery>;
export type WebhookEvent = z.infer<typeof webhookEventSchema>;

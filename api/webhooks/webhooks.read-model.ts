import { Injectable } from '@nestjs/common';
import type { WebhookDeliveriesQuery, WebhookDelivery, WebhookResponse } from '../contract/endpoints/webhooks.js';
import { Database } from '../platform/database/database.js';
import type { WebhookModel } from '../platform/database/generated/models/Webhook.js';

/** Webhooks and what became of what they were told. */
@Injectable()
export class WebhooksReadModel {
  constructor(private readonly database: Database) {}

  async list(): Promise<WebhookResponse[]> {
    return (await this.rows()).map(toWebhook);
  }

  /** Null when there is none, or no longer. */
  async find(id: string): Promise<WebhookResponse | null> {
    const row = await this.database.client.webhook.findFirst({ where: { id, endedAt: null } });
    return row && toWebhook(row);
  }

  /** With what it signs by. */
  async toDeliver(id: string) {
    return this.database.client.webhook.findFirst({ where: { id, endedAt: null, pausedAt: null } });
  }

  /** Ids of those that may have something to be told. */
  async waiting(): Promise<string[]> {
    const { _max } = await this.database.client.change.aggregate({ _max: { number: true } });
    const where = { endedAt: null, pausedAt: null, toldUpTo: { lt: _max.number ?? 0n } };
    return (await this.database.client.webhook.findMany({ where, select: { id: true } })).map(({ id }) => id);
  }

  async deliveries(webhookId: string, { limit, cursor }: WebhookDeliveriesQuery) {
    const rows = await this.database.client.webhookAttempt.findMany({
      where: { webhookId, ...(cursor && { id: { lt: cursor } }) },
      orderBy: { id: 'desc' },
      take: limit + 1,
      include: { change: { select: { kind: true } } },
    });
    const items = rows.slice(0, limit).map(({ id, changeNumber, change, at, isDelivered, status, words, tookMs }) => ({
      id,
      change: Number(changeNumber),
      kind: change.kind as WebhookDelivery['kind'],
      at: at.toISOString(),
      isDelivered,
      status,
      words,
      tookMs,
    }));
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }

  private rows() {
    return this.database.client.webhook.findMany({ where: { endedAt: null }, orderBy: { id: 'asc' } });
  }
}

const toWebhook = (row: WebhookModel): WebhookResponse => ({
  id: row.id,
  address: row.address,
  kinds: row.kinds as WebhookResponse['kinds'],
  note: row.note,
  createdAt: row.createdAt.toISOString(),
  toldUpTo: Number(row.toldUpTo),
  failures: row.failures,
  failingSince: row.failingSince?.toISOString() ?? null,
  pausedAt: row.pausedAt?.toISOString() ?? null,
  pausedBecause: row.pausedBecause,
});

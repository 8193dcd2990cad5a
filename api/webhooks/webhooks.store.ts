import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { WebhookRequest } from '../contract/endpoints/webhooks.js';
import type { Posted } from './post-event.js';

export interface NewWebhook extends WebhookRequest {
  readonly secret: string;
  readonly createdById: string;
  readonly createdAt: Date;
}

/** What an attempt leaves behind. */
export interface Attempt {
  readonly webhookId: string;
  readonly changeNumber: number;
  /** How far it had been told when this was tried. */
  readonly toldUpTo: bigint;
  readonly at: Date;
  readonly posted: Posted;
  /** Why it is paused from now on; null: it is not. */
  readonly pause: string | null;
}

/** The only writer of webhooks and of their attempts. */
@Injectable()
export class WebhooksStore {
  /** A new one is told of what comes after it. */
  async add(tx: Transaction, webhook: NewWebhook): Promise<string> {
    const newest = await tx.change.aggregate({ _max: { number: true } });
    return (await tx.webhook.create({ data: { ...webhook, toldUpTo: newest._max.number ?? 0n }, select: { id: true } })).id;
  }

  /** Locks one that has not ended; null when there is none. */
  async lock(tx: Transaction, id: string) {
    await tx.$queryRaw`SELECT 1 FROM "webhook" WHERE "id" = ${id}::uuid FOR UPDATE`;
    return tx.webhook.findFirst({ where: { id, endedAt: null } });
  }

  async end(tx: Transaction, id: string, at: Date): Promise<void> {
    await tx.webhook.update({ where: { id }, data: { endedAt: at } });
  }

  async pause(tx: Transaction, id: string, at: Date, because: string): Promise<void> {
    await tx.webhook.update({ where: { id }, data: { pausedAt: at, pausedBecause: because } });
  }

  /** What failed before counts no more. */
  async resume(tx: Transaction, id: string): Promise<void> {
    await tx.webhook.update({ where: { id }, data: { pausedAt: null, pausedBecause: null, failures: 0, failingSince: null } });
  }

  async rewind(tx: Transaction, id: string, after: number): Promise<void> {
    await tx.webhook.update({ where: { id }, data: { toldUpTo: BigInt(after) } });
  }

  /** Writes an attempt down and moves on behind what was delivered, unless somebody rewound it meanwhile. */
  async keep(tx: Transaction, { webhookId, changeNumber, toldUpTo, at, posted, pause }: Attempt): Promise<void> {
    const webhook = await this.lock(tx, webhookId);
    await tx.webhookAttempt.create({ data: { webhookId, changeNumber: BigInt(changeNumber), at, ...posted } });
    if (!webhook) return;
    const data = posted.isDelivered
      ? { ...(webhook.toldUpTo === toldUpTo && { toldUpTo: BigInt(changeNumber) }), failures: 0, failingSince: null }
      : { failures: webhook.failures + 1, failingSince: webhook.failingSince ?? at };
    await tx.webhook.update({ where: { id: webhookId }, data });
    if (pause !== null) await this.pause(tx, webhookId, at, pause);
  }
}

import { Inject, Injectable, Logger } from '@nestjs/common';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { PAUSED_AFTER_DAYS } from '../contract/endpoints/webhooks.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { withDatabaseLock } from '../platform/database/database-lock.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { ChangesReadModel } from '../releases/changes.read-model.js';
import { postEvent } from './post-event.js';
import type { Posted } from './post-event.js';
import { TELL_WEBHOOK, waitAfter } from './webhook-orders.js';
import type { TellWebhookOrder } from './webhook-orders.js';
import { WebhooksReadModel } from './webhooks.read-model.js';
import { WebhooksStore } from './webhooks.store.js';

const AT_ONCE = 100;
const GONE = 410;
const DAY_MS = 86_400_000;

/** Tells a webhook what it was not told yet, one change after the other; what fails is tried again before anything later is told. */
@Injectable()
export class TellWebhook {
  private readonly log = new Logger('webhooks');

  constructor(
    private readonly webhooks: WebhooksReadModel,
    private readonly store: WebhooksStore,
    private readonly changes: ChangesReadModel,
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly clock: Clock,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** One at a time for each webhook, whichever worker it is. */
  async run({ id }: TellWebhookOrder): Promise<void> {
    await withDatabaseLock(this.config.DATABASE_URL, `webhook ${id}`, async () => {
      while (await this.tellNext(id));
    });
  }

  /** Whether there may be more to tell now. */
  private async tellNext(id: string): Promise<boolean> {
    const webhook = await this.webhooks.toDeliver(id);
    if (!webhook) return false;
    const change = await this.nextFor(webhook);
    if (!change) return false;
    const event = { type: change.kind, timestamp: change.at, data: change };
    const { WEBHOOK_TIMEOUT_SECONDS, WEBHOOKS_TO_NEAR_ADDRESSES } = this.config;
    const options = { withinMs: WEBHOOK_TIMEOUT_SECONDS * 1000, nearAllowed: WEBHOOKS_TO_NEAR_ADDRESSES };
    const posted = await postEvent(webhook, `change_${change.number}`, event, options);
    const pause = this.reasonToPause(posted, webhook.failingSince);
    const attempt = { webhookId: id, changeNumber: change.number, toldUpTo: webhook.toldUpTo, at: this.clock.now(), posted, pause };
    await this.database.transaction((tx) => this.store.keep(tx, attempt));
    if (pause !== null) this.log.error(`The webhook ${id} at ${webhook.address} is paused. ${pause}`);
    if (posted.isDelivered) return true;
    if (pause === null) await this.jobs.order(null, TELL_WEBHOOK, { id }, { key: id, afterS: waitAfter(webhook.failures + 1) });
    return false;
  }

  /** The first change of its kinds that it was not told. */
  private async nextFor({ toldUpTo, kinds }: { readonly toldUpTo: bigint; readonly kinds: readonly string[] }) {
    for (let after = Number(toldUpTo); ;) {
      const next = await this.changes.after(after, AT_ONCE);
      const found = next.find(({ kind }) => kinds.includes(kind));
      if (found || next.length < AT_ONCE) return found;
      after = next.at(-1)?.number ?? after;
    }
  }

  private reasonToPause({ isDelivered, status, words }: Posted, failingSince: Date | null): string | null {
    if (isDelivered) return null;
    if (status === GONE) return 'It answered with 410: it is gone and wants no more.';
    const days = failingSince === null ? 0 : (this.clock.now().getTime() - failingSince.getTime()) / DAY_MS;
    return days >= PAUSED_AFTER_DAYS ? `Every attempt of ${PAUSED_AFTER_DAYS} days failed. The last: ${words}` : null;
  }
}

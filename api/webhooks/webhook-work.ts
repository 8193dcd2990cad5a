import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Watch } from '../platform/database/watch-channel.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { TellWebhook } from './tell-webhook.js';
import { TELL_WEBHOOK } from './webhook-orders.js';
import type { TellWebhookOrder } from './webhook-orders.js';
import { WebhooksReadModel } from './webhooks.read-model.js';

const CHANNEL = 'changes';
const LOOK_EVERY_MS = 60_000;

/** What the worker does for webhooks: at each change it orders the telling, and carries out such orders. */
@Injectable()
export class WebhookWork implements OnApplicationShutdown {
  private watch: Watch | undefined;

  constructor(
    private readonly jobs: Jobs,
    private readonly telling: TellWebhook,
    private readonly webhooks: WebhooksReadModel,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async start(): Promise<void> {
    await this.jobs.carryOut(TELL_WEBHOOK, (order) => this.telling.run(order as TellWebhookOrder));
    const look = () => this.orderWhatWaits();
    this.watch = new Watch({ databaseUrl: this.config.DATABASE_URL, channel: CHANNEL, everyMs: LOOK_EVERY_MS, look });
    await this.watch.start();
  }

  /** Of one that waits for its next attempt already there is an order. */
  private async orderWhatWaits(): Promise<void> {
    for (const id of await this.webhooks.waiting()) await this.jobs.order(null, TELL_WEBHOOK, { id }, { key: id });
  }

  async onApplicationShutdown(): Promise<void> {
    await this.watch?.stop();
  }
}

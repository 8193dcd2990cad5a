import { Inject, Injectable } from '@nestjs/common';
import { randomBytes } from 'node:crypto';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import type { WebhookRequest } from '../contract/endpoints/webhooks.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { addressFor } from './far-address.js';
import { TELL_WEBHOOK } from './webhook-orders.js';
import { webhookProblems } from './webhooks.errors.js';
import { WebhooksStore } from './webhooks.store.js';

/** Bytes of a secret: the convention asks for 24 to 64. */
const SECRET_BYTES = 32;

/** What an admin does with webhooks. */
@Injectable()
export class KeepWebhooks {
  constructor(
    private readonly database: Database,
    private readonly store: WebhooksStore,
    private readonly jobs: Jobs,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /**
   * Begins to tell an address of what comes.
   * @throws Problem where the address is none that is told
   */
  async add(actor: Actor, request: WebhookRequest): Promise<{ id: string; secret: string }> {
    await addressFor(new URL(request.address), this.config.WEBHOOKS_TO_NEAR_ADDRESSES).catch((error: unknown) => {
      throw new Problem(webhookProblems['webhooks/address-refused'], (error as Error).message);
    });
    const secret = `whsec_${randomBytes(SECRET_BYTES).toString('base64')}`;
    return this.database.transaction(async (tx) => {
      const createdAt = this.clock.now();
      const id = await this.store.add(tx, { ...request, secret, createdById: actor.accountId, createdAt });
      await this.note(tx, actor, 'webhook.added', id, request);
      return { id, secret };
    });
  }

  end(actor: Actor, id: string): Promise<void> {
    return this.change(actor, id, 'webhook.ended', null, (tx) => this.store.end(tx, id, this.clock.now()));
  }

  pause(actor: Actor, id: string, reason: string): Promise<void> {
    return this.change(actor, id, 'webhook.paused', { reason }, (tx) => this.store.pause(tx, id, this.clock.now(), reason));
  }

  resume(actor: Actor, id: string): Promise<void> {
    return this.change(actor, id, 'webhook.resumed', null, async (tx) => {
      await this.store.resume(tx, id);
      await this.tellNow(tx, id);
    });
  }

  /**
   * Lets it be told again of what came after a change.
   * @throws Problem where it was not told so far: it would never be told of what lies between
   */
  replay(actor: Actor, id: string, after: number): Promise<void> {
    return this.change(actor, id, 'webhook.replayed', { after }, async (tx, { toldUpTo }) => {
      if (after > toldUpTo)
        throw new Problem(
          webhookProblems['webhooks/not-told-yet'],
          `Found ${after}; expected at most ${toldUpTo}, the last change that it was told.`,
        );
      await this.store.rewind(tx, id, after);
      await this.tellNow(tx, id);
    });
  }

  /** Whoever asks has mended something: the next attempt does not wait any more for what failed before. */
  private async tellNow(tx: Transaction, id: string): Promise<void> {
    await this.jobs.takeBack(tx, TELL_WEBHOOK, id);
    await this.jobs.order(tx, TELL_WEBHOOK, { id }, { key: id });
  }

  private change(
    actor: Actor,
    id: string,
    action: string,
    after: object | null,
    act: (tx: Transaction, webhook: { readonly toldUpTo: bigint }) => Promise<void>,
  ): Promise<void> {
    return this.database.transaction(async (tx) => {
      const webhook = await this.store.lock(tx, id);
      if (!webhook) throw new Problem(platformProblems['request/not-found'], `No webhook has the id ${id}.`);
      await act(tx, webhook);
      await this.note(tx, actor, action, id, after);
    });
  }

  private note(tx: Transaction, { accountId }: Actor, action: string, id: string, after: object | null): Promise<void> {
    return this.audit.record(tx, { actorId: accountId, action, objectType: 'webhook', objectId: id, ...(after && { after }) });
  }
}

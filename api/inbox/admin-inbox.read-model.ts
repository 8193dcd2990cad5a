import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { Clock } from '../platform/clock/clock.js';
import { WebhooksReadModel } from '../webhooks/webhooks.read-model.js';
import { waiting } from './inbox-words.js';

/** What waits for an admin: invitations that nobody has taken up, the oldest first; integrators that are told nothing. */
@Injectable()
export class AdminInbox {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly webhooks: WebhooksReadModel,
    private readonly clock: Clock,
  ) {}

  async all(): Promise<InboxItem[]> {
    const invitations = (await this.accounts.openInvitations(this.clock.now())).toReversed();
    const paused = (await this.webhooks.list()).filter(({ pausedAt }) => pausedAt !== null);
    return [
      ...waiting(
        'invitations_open',
        invitations.map(({ note }) => note),
      ),
      ...waiting(
        'webhooks_paused',
        paused.map(({ note }) => note),
      ),
    ];
  }
}

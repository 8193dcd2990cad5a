import { Injectable } from '@nestjs/common';
import type { InboxItem } from '../contract/endpoints/inbox.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { waiting } from './inbox-item.js';

/** What waits for an admin: invitations that nobody has taken up. */
@Injectable()
export class AdminInbox {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async all(): Promise<InboxItem[]> {
    const invitations = await this.database.client.invitation.findMany({
      where: { acceptedAt: null, expiresAt: { gt: this.clock.now() } },
      select: { note: true },
      orderBy: { createdAt: 'asc' },
    });
    return waiting(
      'invitations_open',
      invitations.map(({ note }) => note),
    );
  }
}

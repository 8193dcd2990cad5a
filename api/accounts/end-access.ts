import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { AccountsStore } from './accounts.store.js';

/** Ends what lets somebody in: sessions, tokens, invitations that nobody has accepted. */
@Injectable()
export class EndAccess {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** Signs out: ends the session that asks; a program has none. */
  async ownSession({ sessionKey }: Actor): Promise<void> {
    if (sessionKey !== null) await this.store.endSessions(this.database.client, { tokenHash: sessionKey });
  }

  /** @param id of one session; null for all of the account */
  async sessions(actor: Actor, accountId: string, id: string | null): Promise<void> {
    await this.database.transaction(async (tx) => {
      const { count } = await this.store.endSessions(tx, { accountId, ...(id === null ? {} : { id }) });
      if (id !== null && count === 0)
        throw new Problem(platformProblems['request/not-found'], 'There is no such session. Look it up: GET /v1/sessions.');
      const after = { sessions: count };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'session.ended',
        objectType: 'account',
        objectId: accountId,
        after,
      });
    });
  }

  async token(actor: Actor, accountId: string, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const count = await this.store.revokeTokens(tx, { accountId, id }, this.clock.now());
      if (count === 0)
        throw new Problem(platformProblems['request/not-found'], 'There is no such token. Look it up in the list of tokens.');
      await this.audit.record(tx, { actorId: actor.accountId, action: 'token.revoked', objectType: 'token', objectId: id });
    });
  }

  async invitation(actor: Actor, id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const count = await this.store.revokeInvitation(tx, id, this.clock.now());
      if (count === 0)
        throw new Problem(
          platformProblems['request/not-found'],
          'There is no such invitation that is still open. Look it up: GET /v1/invitations.',
        );
      await this.audit.record(tx, { actorId: actor.accountId, action: 'invitation.revoked', objectType: 'invitation', objectId: id });
    });
  }
}

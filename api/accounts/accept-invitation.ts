import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { toAccount } from './account.js';
import { accountProblems } from './accounts.errors.js';
import type { AcceptanceRequest, AccountResponse } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';
import { hashPassword } from './passwords.js';

/** Makes the account that an invitation promised; an invitation serves once. */
@Injectable()
export class AcceptInvitation {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(secret: string, { email, displayName, password }: AcceptanceRequest): Promise<AccountResponse> {
    const passwordHash = await hashPassword(password);
    const now = this.clock.now();
    return this.database.transaction(async (tx) => {
      const invitation = await this.store.takeInvitation(tx, sha256(secret), now);
      if (!invitation) throw new Problem(accountProblems['accounts/invitation-not-valid']);
      const account = await this.store.createAccount(tx, { email, displayName, passwordHash, roles: invitation.roles, createdAt: now });
      const after = { email, displayName, roles: invitation.roles };
      await this.audit.record(tx, { actorId: account.id, action: 'account.made', objectType: 'account', objectId: account.id, after });
      return toAccount(account);
    });
  }
}

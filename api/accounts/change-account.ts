import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { toAccount } from './account.js';
import { accountProblems } from './accounts.errors.js';
import type { AccountChange, AccountResponse } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';

/** Gives and takes roles, and disables; the last admin stays. */
@Injectable()
export class ChangeAccount {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, id: string, version: number, change: AccountChange): Promise<AccountResponse> {
    return this.database.transaction(async (tx) => {
      const admins = await this.store.lockAdmins(tx);
      const before = await this.store.accountById(tx, id);
      if (!before) throw new Problem(platformProblems['request/not-found'], `No account has the id ${id}.`);
      requireSameVersion(before.version, version);
      const staysAdmin = !(change.isDisabled ?? before.isDisabled) && (change.roles ?? before.roles).includes('admin');
      if (!staysAdmin && admins.length === 1 && admins[0] === id) throw new Problem(accountProblems['accounts/last-admin']);
      const after = await this.store.changeAccount(tx, id, {
        ...(change.roles ? { roles: change.roles } : {}),
        ...(change.isDisabled === undefined ? {} : { isDisabled: change.isDisabled }),
      });
      if (after.isDisabled) await this.letNobodyIn(tx, id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'account.changed',
        objectType: 'account',
        objectId: id,
        before: toAccount(before),
        after: toAccount(after),
      });
      return toAccount(after);
    });
  }

  /** For good: whoever is enabled again signs in and makes new tokens. */
  private async letNobodyIn(tx: Transaction, accountId: string): Promise<void> {
    await this.store.endSessions(tx, { accountId });
    await this.store.revokeTokens(tx, { accountId }, this.clock.now());
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import type { PasswordChange } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';
import { Attempts, passwordOf } from './attempts.js';
import { hashPassword, passwordFits } from './hash-password.js';

/** Sets a new password in place of the one that is told; every other session of the account ends. */
@Injectable()
export class ChangePassword {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly attempts: Attempts,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run({ accountId, sessionKey }: Actor, { currentPassword, newPassword }: PasswordChange): Promise<void> {
    const tried = passwordOf(accountId);
    await this.attempts.begin(tried);
    const account = await this.accounts.byId(accountId);
    if (!(await passwordFits(account?.passwordHash ?? null, currentPassword)))
      throw new Problem(accountProblems['accounts/wrong-password']);
    const passwordHash = await hashPassword(newPassword);
    await this.database.transaction(async (tx) => {
      await this.attempts.succeed(tx, tried, null);
      await this.store.setPassword(tx, accountId, passwordHash);
      await this.store.endSessions(tx, { accountId, ...(sessionKey === null ? {} : { tokenHash: { not: sessionKey } }) });
      await this.audit.record(tx, { actorId: accountId, action: 'account.passwordChanged', objectType: 'account', objectId: accountId });
    });
  }
}

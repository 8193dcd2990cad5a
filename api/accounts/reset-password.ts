import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import { AccountsStore } from './accounts.store.js';
import { Attempts, secretsFrom, signInOf } from './attempts.js';
import { hashPassword } from './hash-password.js';

/** Sets the password that a reset promised. Whoever knew the old one is out: sessions end, tokens are revoked. */
@Injectable()
export class ResetPassword {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly attempts: Attempts,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** @param network where it comes from */
  async run(secret: string, password: string, network: string): Promise<void> {
    await this.attempts.begin(secretsFrom(network));
    const tokenHash = sha256(secret);
    const now = this.clock.now();
    if (!(await this.accounts.isReset(tokenHash, now))) throw new Problem(accountProblems['accounts/reset-not-valid']);
    const passwordHash = await hashPassword(password);
    await this.database.transaction(async (tx) => {
      const account = await this.store.takeReset(tx, tokenHash, now);
      if (!account) throw new Problem(accountProblems['accounts/reset-not-valid']);
      await this.attempts.succeed(tx, signInOf(account.email, null), secretsFrom(network));
      await this.store.setPassword(tx, account.id, passwordHash);
      await this.store.endSessions(tx, { accountId: account.id });
      await this.store.revokeTokens(tx, { accountId: account.id }, now);
      await this.audit.record(tx, { actorId: account.id, action: 'account.passwordReset', objectType: 'account', objectId: account.id });
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { backOffSeconds, toAccount } from './account.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import type { SignInRequest } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';
import { passwordFits } from './passwords.js';

export const SESSION_DAYS = 14;

/** Opens a session; unknown account and wrong password are told alike, in the same time. */
@Injectable()
export class SignIn {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly identifiers: Identifiers,
  ) {}

  async run({ email, password }: SignInRequest) {
    await this.refuseWhileBlocked(email);
    const account = await this.accounts.byEmail(email);
    const fits = await passwordFits(account?.passwordHash ?? null, password);
    if (!account || !fits || account.isDisabled) {
      await this.countFailure(email);
      throw new Problem(accountProblems['accounts/wrong-credentials']);
    }
    const secret = this.identifiers.secret();
    const csrfToken = this.identifiers.secret();
    const createdAt = this.clock.now();
    const expiresAt = new Date(createdAt.getTime() + SESSION_DAYS * 86_400_000);
    await this.database.transaction(async (tx) => {
      await this.store.forgetFailures(tx, email);
      await this.store.createSession(tx, { tokenHash: sha256(secret), accountId: account.id, csrfToken, createdAt, expiresAt });
      await this.audit.record(tx, { actorId: account.id, action: 'account.signedIn', objectType: 'account', objectId: account.id });
    });
    return { secret, expiresAt, session: { csrfToken, account: toAccount(account) } };
  }

  private async refuseWhileBlocked(email: string): Promise<void> {
    const until = await this.accounts.blockedUntil(email);
    const waitMs = (until?.getTime() ?? 0) - this.clock.now().getTime();
    if (waitMs <= 0) return;
    const seconds = Math.ceil(waitMs / 1000);
    throw new Problem(accountProblems['accounts/too-many-failures'], `Try again in ${seconds} s.`, [], { 'Retry-After': String(seconds) });
  }

  private async countFailure(email: string): Promise<void> {
    const until = (failures: number) => new Date(this.clock.now().getTime() + 1000 * backOffSeconds(failures));
    await this.database.transaction((tx) => this.store.countFailure(tx, email, until));
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { toAccount } from './account.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import type { SignInRequest } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';
import { Attempts, secretsFrom, signInOf } from './attempts.js';
import { passwordFits } from './hash-password.js';

export const SESSION_DAYS = 14;

/** Opens a session; unknown account and wrong password are told alike, in the same time. */
@Injectable()
export class SignIn {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly attempts: Attempts,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly identifiers: Identifiers,
  ) {}

  /** @param network where it comes from */
  async run({ email, password }: SignInRequest, network: string) {
    const createdAt = this.clock.now();
    const isKnown = await this.accounts.isKnownFrom(network, email, createdAt);
    const tried = signInOf(email, isKnown ? network : null);
    await this.attempts.begin(secretsFrom(network), tried);
    const account = await this.accounts.byEmail(email);
    const fits = await passwordFits(account?.passwordHash ?? null, password);
    if (!account || !fits || account.isDisabled) throw new Problem(accountProblems['accounts/wrong-credentials']);
    const secret = this.identifiers.secret();
    const csrfToken = this.identifiers.secret();
    const expiresAt = new Date(createdAt.getTime() + SESSION_DAYS * 86_400_000);
    const session = { tokenHash: sha256(secret), accountId: account.id, csrfToken, network, createdAt, expiresAt };
    await this.database.transaction(async (tx) => {
      await this.attempts.succeed(tx, tried, secretsFrom(network));
      await this.store.createSession(tx, session);
      await this.audit.record(tx, { actorId: account.id, action: 'account.signedIn', objectType: 'account', objectId: account.id });
    });
    return { secret, expiresAt, session: { csrfToken, account: toAccount(account) } };
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { isDuplicate } from '../platform/database/database-failure.js';
import { toAccount } from './account.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import type { AcceptanceRequest, AccountResponse } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';
import { Attempts, secretsFrom } from './attempts.js';
import { nameAsSeen } from '../platform/identifiers/name-as-seen.js';
import { hashPassword } from './hash-password.js';

/** Makes the account that an invitation promised; an invitation serves once. */
@Injectable()
export class AcceptInvitation {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly attempts: Attempts,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** @param network where it comes from */
  async run(secret: string, request: AcceptanceRequest, network: string): Promise<AccountResponse> {
    await this.attempts.begin(secretsFrom(network));
    if (!(await this.accounts.isInvitation(sha256(secret), this.clock.now())))
      throw new Problem(accountProblems['accounts/invitation-not-valid']);
    const passwordHash = await hashPassword(request.password);
    try {
      return await this.make(secret, request, passwordHash, network);
    } catch (error) {
      if (!isDuplicate(error)) throw error;
      if (await this.accounts.byEmail(request.email))
        throw new Problem(accountProblems['accounts/address-taken'], `${request.email} has an account.`);
      throw new Problem(
        accountProblems['accounts/name-taken'],
        `Found “${request.displayName}”, which cannot be told from the name of another.`,
      );
    }
  }

  private make(secret: string, { email, displayName }: AcceptanceRequest, passwordHash: string, network: string): Promise<AccountResponse> {
    const now = this.clock.now();
    return this.database.transaction(async (tx) => {
      await this.attempts.succeed(tx, null, secretsFrom(network));
      const invitation = await this.store.takeInvitation(tx, sha256(secret), now);
      if (!invitation) throw new Problem(accountProblems['accounts/invitation-not-valid']);
      const account = await this.store.createAccount(tx, {
        email,
        displayName,
        nameAsSeen: nameAsSeen(displayName),
        passwordHash,
        roles: invitation.roles,
        createdAt: now,
      });
      const after = { email, displayName, roles: invitation.roles };
      await this.audit.record(tx, { actorId: account.id, action: 'account.made', objectType: 'account', objectId: account.id, after });
      return toAccount(account);
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { Identifiers, sha256 } from '../platform/identifiers/identifiers.js';
import { accountProblems } from './accounts.errors.js';
import type { TokenRequest } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';

/** Makes a bearer token for a program; it is shown once and kept as a digest. */
@Injectable()
export class MakeToken {
  constructor(
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly identifiers: Identifiers,
  ) {}

  async run(actor: Actor, { name, scopes, expiresInDays }: TokenRequest) {
    const beyond = scopes.filter((scope) => !actor.roles.includes(scope));
    if (beyond.length > 0) throw new Problem(accountProblems['accounts/scope-beyond-roles'], `You are not: ${beyond.join(', ')}.`);
    const token = this.identifiers.secret();
    const createdAt = this.clock.now();
    const expiresAt = new Date(createdAt.getTime() + expiresInDays * 86_400_000);
    const made = await this.database.transaction(async (tx) => {
      const row = await this.store.createToken(tx, {
        accountId: actor.accountId,
        name,
        tokenHash: sha256(token),
        scopes,
        createdAt,
        expiresAt,
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'token.made',
        objectType: 'token',
        objectId: row.id,
        after: { name, scopes },
      });
      return row;
    });
    return { id: made.id, name, scopes, expiresAt: expiresAt.toISOString(), lastUsedAt: null, token };
  }
}

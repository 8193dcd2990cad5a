import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { accountProblems } from './accounts.errors.js';
import { AccountsReadModel } from './accounts.read-model.js';
import type { InterestRequest } from '../contract/endpoints/accounts.js';
import { AccountsStore } from './accounts.store.js';

/** Puts a tie between a person and a maker on record; it flags their submissions and bars their reviews. */
@Injectable()
export class DeclareInterest {
  constructor(
    private readonly accounts: AccountsReadModel,
    private readonly store: AccountsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, { maker, words }: InterestRequest) {
    const found = await this.accounts.makerId(maker);
    if (!found) throw new Problem(accountProblems['accounts/unknown-maker'], `Found "${maker}".`);
    const declaredAt = this.clock.now();
    await this.database.transaction(async (tx) => {
      await this.store.declareInterest(tx, { accountId: actor.accountId, makerId: found.id, words, declaredAt });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'interest.declared',
        objectType: 'account',
        objectId: actor.accountId,
        after: { maker, words },
      });
    });
    return { maker, words, declaredAt: declaredAt.toISOString() };
  }
}

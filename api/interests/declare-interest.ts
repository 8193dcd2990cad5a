import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { InterestRequest } from '../contract/endpoints/accounts.js';
import { interestProblems } from './interests.errors.js';
import { InterestsStore } from './interests.store.js';

/** Puts a tie between a person and a maker on record; it flags their submissions and bars their reviews. */
@Injectable()
export class DeclareInterest {
  constructor(
    private readonly catalogue: CatalogueReadModel,
    private readonly store: InterestsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, { maker, words }: InterestRequest) {
    const makerId = await this.catalogue.makerId(maker);
    if (makerId === null) throw new Problem(interestProblems['interests/unknown-maker'], `Found "${maker}".`);
    const declaredAt = this.clock.now();
    await this.database.transaction(async (tx) => {
      await this.store.declare(tx, { accountId: actor.accountId, makerId, words, declaredAt });
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

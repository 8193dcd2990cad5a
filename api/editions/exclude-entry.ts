import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Transaction } from '../platform/database/database.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireState } from './edition.js';
import { editionProblems } from './editions.errors.js';
import type { ExclusionRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';

/** Leaves an entry out with a reason, or takes it in again; until the edition is published. */
@Injectable()
export class ExcludeEntry {
  constructor(
    private readonly store: EditionsStore,
    private readonly accounts: AccountsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, { variant, ...exclusion }: ExclusionRequest): Promise<void> {
    await this.database.transaction(async (tx) => {
      const entry = await this.entryToChange(tx, actor, slug, variant);
      await this.store.exclude(tx, { entryId: entry.id, ...exclusion, byId: actor.accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'entry.excluded',
        objectType: 'entry',
        objectId: `${slug}/${variant}`,
        after: exclusion,
      });
    });
  }

  async undo(actor: Actor, slug: string, variant: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const { id, exclusion } = await this.entryToChange(tx, actor, slug, variant);
      if (!exclusion) throw new Problem(platformProblems['request/not-found'], `${variant} is not excluded.`);
      await this.store.readmit(tx, id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'entry.readmitted',
        objectType: 'entry',
        objectId: `${slug}/${variant}`,
        before: exclusion,
      });
    });
  }

  private async entryToChange(tx: Transaction, actor: Actor, slug: string, variant: string) {
    const edition = await this.store.lock(tx, slug);
    const entry = edition && (await this.store.findEntry(tx, edition.id, variant));
    if (!entry) throw new Problem(platformProblems['request/not-found'], `Edition ${slug} has no entry ${variant}.`);
    requireState(edition, ['planned', 'open', 'closed']);
    if (await this.accounts.hasInterest(actor.accountId, entry.variant.line.makerId))
      throw new Problem(editionProblems['editions/interest']);
    await this.store.touch(tx, edition.id);
    return entry;
  }
}

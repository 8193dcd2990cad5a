import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import type { ExclusionRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';
import { EntryToChange } from './entry-to-change.js';

const UNTIL_PUBLISHED = ['planned', 'open', 'closed'] as const;

/** Leaves an entry out with a reason, or takes it in again; until the edition is published. */
@Injectable()
export class ExcludeEntry {
  constructor(
    private readonly store: EditionsStore,
    private readonly entries: EntryToChange,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, { variant, ...exclusion }: ExclusionRequest): Promise<void> {
    await this.database.transaction(async (tx) => {
      const entry = await this.entries.lock(tx, actor, slug, variant, UNTIL_PUBLISHED);
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
      const { id, exclusion } = await this.entries.lock(tx, actor, slug, variant, UNTIL_PUBLISHED);
      if (!exclusion)
        throw new Problem(
          platformProblems['request/not-found'],
          `${variant} is not excluded; nothing is left to readmit. The entries of the edition say which are.`,
        );
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
}

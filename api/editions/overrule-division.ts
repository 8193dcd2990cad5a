import { Injectable } from '@nestjs/common';
import type { OverrulingRequest } from '../contract/endpoints/editions.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { editionProblems } from './editions.errors.js';
import { EditionsStore } from './editions.store.js';
import { EntryToChange } from './entry-to-change.js';

/** A published edition shows it with its next revision. */
const ALWAYS = ['planned', 'open', 'closed', 'published'] as const;

/** Puts an entry into a division whatever the rule says, with a reason that readers see, or lets the rule decide again. */
@Injectable()
export class OverruleDivision {
  constructor(
    private readonly store: EditionsStore,
    private readonly entries: EntryToChange,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string, { variant, division, reason }: OverrulingRequest): Promise<void> {
    await this.database.transaction(async (tx) => {
      const { id, divisions, overruling } = await this.entries.lock(tx, actor, slug, variant, ALWAYS);
      const into = divisions.find((one) => one.slug === division);
      if (!into) {
        const known = divisions.flatMap((one) => one.slug ?? []).join(', ');
        throw new Problem(
          editionProblems['editions/no-such-division'],
          `${slug} has ${known ? `the divisions ${known}` : 'one division'}.`,
        );
      }
      await this.store.overrule(tx, { entryId: id, divisionId: into.id, reason, byId: actor.accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'entry.divisionOverruled',
        objectType: 'entry',
        objectId: `${slug}/${variant}`,
        ...(overruling && { before: { division: overruling.division.slug, reason: overruling.reason } }),
        after: { division, reason },
      });
    });
  }

  async undo(actor: Actor, slug: string, variant: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const { id, overruling } = await this.entries.lock(tx, actor, slug, variant, ALWAYS);
      if (!overruling)
        throw new Problem(
          platformProblems['request/not-found'],
          `${variant} is where the rule puts it; nothing is left to take back. The entries of the edition say which were overruled.`,
        );
      await this.store.follow(tx, id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'entry.divisionFollowsRule',
        objectType: 'entry',
        objectId: `${slug}/${variant}`,
        before: { division: overruling.division.slug, reason: overruling.reason },
      });
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/if-match.js';
import { requireState } from '../editions/edition.js';
import { editionProblems } from '../editions/editions.errors.js';
import { EditionsStore } from '../editions/editions.store.js';

/** Closes an edition: no submission is taken any more, none may still wait for its review, and none that counts may be in doubt. */
@Injectable()
export class CloseEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lock(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      requireSameVersion(edition.version, version);
      requireState(edition, ['open']);
      const waiting = await this.store.countSubmissions(tx, edition.id, ['submitted', 'returned']);
      if (waiting > 0) throw new Problem(editionProblems['editions/work-in-progress'], `${waiting} submissions are handed in or returned.`);
      const doubted = await this.store.countDoubted(tx, edition.id);
      if (doubted > 0)
        throw new Problem(editionProblems['editions/in-doubt'], `${doubted} accepted submissions have a held finding without an answer.`);
      await this.store.touch(tx, edition.id, { state: 'closed' });
      await this.audit.record(tx, { actorId: actor.accountId, action: 'edition.closed', objectType: 'edition', objectId: slug });
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { boardProblems } from './board.errors.js';
import { EditionsStore } from '../editions/editions.store.js';

/** Closes an edition: no submission is taken any more, none may still wait for its review, and none that counts may be in doubt. */
@Injectable()
export class CloseEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly submissions: SubmissionsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['open']);
      const waiting = await this.submissions.countWaiting(edition.id, tx);
      if (waiting > 0) throw new Problem(boardProblems['editions/work-in-progress'], `${waiting} submissions are handed in or returned.`);
      const doubted = await this.submissions.countInDoubt(edition.id, tx);
      if (doubted > 0)
        throw new Problem(boardProblems['editions/in-doubt'], `${doubted} accepted submissions have a held finding without an answer.`);
      await this.store.touch(tx, edition.id, { state: 'closed' });
      await this.audit.record(tx, { actorId: actor.accountId, action: 'edition.closed', objectType: 'edition', objectId: slug });
    });
  }
}

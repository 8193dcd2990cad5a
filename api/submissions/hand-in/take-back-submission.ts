import { Injectable } from '@nestjs/common';
import { DecisionsReadModel } from '../../decisions/decisions.read-model.js';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { requireOwn } from '../submission.js';
import { submissionProblems } from '../submissions.errors.js';
import { SubmissionsStore } from '../submissions.store.js';

/** Takes an own submission back, while no reviewer looks at it or after it was returned. It stays on record, counts nowhere, and blocks nothing. */
@Injectable()
export class TakeBackSubmission {
  constructor(
    private readonly store: SubmissionsStore,
    private readonly decisions: DecisionsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, reference: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const submission = requireOwn(actor, await this.store.lock(tx, reference), reference, 'takeBack');
      requireSameVersion(submission.version, version);
      const { id, state } = submission;
      const { id: revisionId } = await this.store.standing(tx, submission);
      if (state === 'submitted' && (await this.decisions.isInReview(id, revisionId)))
        throw new Problem(submissionProblems['submissions/in-review'], `A reviewer has claimed or judged ${reference}.`);
      await this.store.takeBack(tx, id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.takenBack',
        objectType: 'submission',
        objectId: reference,
        before: { state },
        after: { state: 'takenBack' },
      });
    });
  }
}

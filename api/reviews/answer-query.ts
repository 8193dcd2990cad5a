import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { reviewProblems } from './reviews.errors.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

/** The tester answers the question on an own submission, once. */
@Injectable()
export class AnswerQuery {
  constructor(
    private readonly store: DecisionsStore,
    private readonly submissions: SubmissionsReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, id: string, answer: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const query = await this.store.lockQuery(tx, id);
      const submission = query && (await this.submissions.known([query.submissionId])).of(query.submissionId);
      if (submission?.testerId !== actor.accountId)
        throw new Problem(platformProblems['request/not-found'], `No query on a submission of yours has the id ${id}.`);
      if (query?.answeredAt !== null) throw new Problem(reviewProblems['reviews/query-answered']);
      await this.store.answerQuery(tx, id, answer, this.clock.now());
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'query.answered',
        objectType: 'submission',
        objectId: submission.reference,
        after: { query: id, answer },
      });
    });
  }
}

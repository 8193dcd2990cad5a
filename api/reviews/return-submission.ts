import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { requireBlindQuestion } from './question-rules.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

export interface Return {
  readonly reason: string | null;
  readonly query: { readonly kind: string; readonly specimens: readonly number[]; readonly question: string };
}

/** Sends a submission back to its tester with a written question. */
@Injectable()
export class ReturnSubmission {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly submissions: SubmissionsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, { reason, query }: Return): Promise<void> {
    const at = this.clock.now();
    await this.mayReview.run(actor, reviewed, 'decide', async (tx, submission) => {
      requireBlindQuestion(query, submission.specimens);
      const { id: submissionId, revision } = submission;
      await this.store.addReview(tx, submission, {
        reviewerId: actor.accountId,
        decision: 'returned',
        reason: reason ?? query.question,
        at,
      });
      await this.store.askQuery(tx, {
        submissionId,
        revision,
        askedById: actor.accountId,
        askedAt: at,
        kind: query.kind,
        specimens: [...query.specimens],
        question: query.question,
      });
      await this.store.giveBack(tx, submission.id, actor.accountId);
      const after = await this.submissions.moveTo(tx, submissionId, 'returned');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.returned',
        objectType: 'submission',
        objectId: reviewed.reference,
        before,
        after: { ...after, revision, query },
      });
    });
  }
}

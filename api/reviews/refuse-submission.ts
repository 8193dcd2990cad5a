import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

/** Refuses a submission for good, with the reason: one that waits for its review, or one that was returned and will not come back. It stays on record. */
@Injectable()
export class RefuseSubmission {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly submissions: SubmissionsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, reason: string, action: 'decide' | 'close' = 'decide'): Promise<void> {
    await this.mayReview.run(actor, reviewed, action, async (tx, submission) => {
      await this.store.addReview(tx, submission, { reviewerId: actor.accountId, decision: 'refused', reason, at: this.clock.now() });
      await this.store.giveBack(tx, submission.id, actor.accountId);
      const after = await this.submissions.moveTo(tx, submission.id, 'refused');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.refused',
        objectType: 'submission',
        objectId: reviewed.reference,
        before,
        after: { ...after, revision: submission.revision, reason },
      });
    });
  }
}

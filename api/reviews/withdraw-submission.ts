import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { OpenReview } from './open-review.js';
import type { ReviewedSubmission } from './open-review.js';
import { ReviewsStore } from './reviews.store.js';

/** Takes an accepted submission out of the results from now on; it stays on record. */
@Injectable()
export class WithdrawSubmission {
  constructor(
    private readonly openReview: OpenReview,
    private readonly store: ReviewsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, reason: string): Promise<void> {
    await this.openReview.run(actor, reviewed, 'withdraw', async (tx, submission) => {
      await this.store.addWithdrawal(tx, { submissionId: submission.id, byId: actor.accountId, reason, at: this.clock.now() });
      const after = await this.store.moveTo(tx, submission.id, 'withdrawn');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.withdrawn',
        objectType: 'submission',
        objectId: reviewed.reference,
        before,
        after: { ...after, revision: submission.revision, reason },
      });
    });
  }
}

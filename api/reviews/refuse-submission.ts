import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { OpenReview } from './open-review.js';
import { ReviewsStore } from './reviews.store.js';

/** Refuses a submission for good, with the reason; it stays on record. */
@Injectable()
export class RefuseSubmission {
  constructor(
    private readonly openReview: OpenReview,
    private readonly store: ReviewsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reference: string, version: number, reason: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const submission = await this.openReview.run(tx, actor, reference, version, 'submitted');
      await this.store.addReview(tx, submission, { reviewerId: actor.accountId, decision: 'refused', reason, at: this.clock.now() });
      const after = await this.store.moveTo(tx, submission.id, 'refused');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.refused',
        objectType: 'submission',
        objectId: reference,
        before,
        after: { ...after, revision: submission.revision, reason },
      });
    });
  }
}

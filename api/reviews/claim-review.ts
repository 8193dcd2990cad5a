import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { CLAIM_HOURS } from '../contract/endpoints/reviews.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

/** Takes a review upon oneself for a while, so that two people do not do the same work; gives it back. */
@Injectable()
export class ClaimReview {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'claim', async (tx, { id }) => {
      const claimedAt = this.clock.now();
      const expiresAt = new Date(claimedAt.getTime() + CLAIM_HOURS * 3_600_000);
      await this.store.claim(tx, { submissionId: id, reviewerId: actor.accountId, claimedAt, expiresAt });
      await this.record(tx, actor, reviewed, 'review.claimed');
    });
  }

  async giveBack(actor: Actor, reviewed: ReviewedSubmission): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'claim', async (tx, { id }) => {
      await this.store.giveBack(tx, id, actor.accountId);
      await this.record(tx, actor, reviewed, 'review.givenBack');
    });
  }

  private record(tx: Parameters<AuditTrail['record']>[0], actor: Actor, { reference }: ReviewedSubmission, action: string): Promise<void> {
    return this.audit.record(tx, { actorId: actor.accountId, action, objectType: 'submission', objectId: reference });
  }
}

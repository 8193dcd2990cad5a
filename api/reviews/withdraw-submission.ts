import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { ProposalsReadModel } from '../proposals/proposals.read-model.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

/** Takes an accepted submission out of the results from now on, as another person proposed; it stays on record. */
@Injectable()
export class WithdrawSubmission {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly submissions: SubmissionsStore,
    private readonly proposals: ProposalsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, proposalId: string): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'withdraw', async (tx, submission) => {
      const { reason } = await this.proposals.seconded(tx, actor, proposalId, 'withdrawal', reviewed.reference);
      await this.store.addWithdrawal(tx, { submissionId: submission.id, byId: actor.accountId, proposalId, reason, at: this.clock.now() });
      const after = await this.submissions.moveTo(tx, submission.id, 'withdrawn');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.withdrawn',
        objectType: 'submission',
        objectId: reviewed.reference,
        before,
        after: { ...after, revision: submission.revision, proposal: proposalId, reason },
      });
    });
  }
}

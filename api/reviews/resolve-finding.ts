import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import type { Actor } from '../platform/http/access.js';
import { OpenReview } from './open-review.js';
import type { ReviewedSubmission } from './open-review.js';
import { requireUnanswered } from './review.js';
import { FindingsStore } from '../findings/findings.store.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';

/** Answers a finding that came up after a submission was accepted, such as a rig found out of control later. */
@Injectable()
export class ResolveFinding {
  constructor(
    private readonly openReview: OpenReview,
    private readonly submissions: SubmissionsStore,
    private readonly findings: FindingsStore,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, finding: string, words: string): Promise<void> {
    await this.openReview.run(actor, reviewed, 'resolve', async (tx, submission) => {
      requireUnanswered(submission.findings, finding);
      await this.findings.answer(tx, finding, words);
      const after = await this.submissions.moveTo(tx, submission.id, 'accepted');
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'finding.resolved',
        objectType: 'submission',
        objectId: reviewed.reference,
        before: { state: submission.state, version: submission.version },
        after: { ...after, finding, words },
      });
    });
  }
}

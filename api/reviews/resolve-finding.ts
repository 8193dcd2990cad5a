import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { reviewProblems } from './reviews.errors.js';
import type { SubmissionUnderReview } from './submission-under-review.js';
import { FindingsStore } from '../findings/findings.store.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';

/** Answers a finding that came up after a submission was accepted, such as a rig found out of control later. */
@Injectable()
export class ResolveFinding {
  constructor(
    private readonly mayReview: MayReview,
    private readonly submissions: SubmissionsStore,
    private readonly findings: FindingsStore,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, finding: string, words: string): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'resolve', async (tx, submission) => {
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

/** A finding that came up after the acceptance is one of the standing revision, and is answered once. */
function requireUnanswered(findings: SubmissionUnderReview['findings'], id: string): void {
  const finding = findings.find((one) => one.id === id);
  if (!finding) throw new Problem(platformProblems['request/not-found'], `No finding of the standing revision has the id ${id}.`);
  if (finding.resolution !== null) throw new Problem(reviewProblems['reviews/finding-answered']);
}

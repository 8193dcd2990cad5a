import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { requireAnswers, requireSettable } from './acceptance-rules.js';
import type { Resolution, SettingAside } from './acceptance-rules.js';
import { FindingsStore } from '../findings/findings.store.js';
import { SubmissionsStore } from '../submissions/submissions.store.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

export interface Acceptance {
  readonly reason: string | null;
  readonly setAside: readonly SettingAside[];
  readonly resolutions: readonly Resolution[];
}

/** Lets a submission count: held findings answered in words, single specimens set aside with a reason. */
@Injectable()
export class AcceptSubmission {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly submissions: SubmissionsStore,
    private readonly findings: FindingsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, { reason, setAside, resolutions }: Acceptance): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'decide', async (tx, submission) => {
      requireAnswers(submission.findings, resolutions);
      requireSettable(submission.specimens, setAside);
      await this.store.addReview(
        tx,
        submission,
        { reviewerId: actor.accountId, decision: 'accepted', reason, at: this.clock.now() },
        setAside,
      );
      for (const { finding, words } of resolutions) await this.findings.answer(tx, finding, words);
      await this.store.giveBack(tx, submission.id, actor.accountId);
      const after = await this.submissions.moveTo(tx, submission.id, 'accepted');
      const before = { state: submission.state, version: submission.version };
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.accepted',
        objectType: 'submission',
        objectId: reviewed.reference,
        before,
        after: { ...after, revision: submission.revision, setAside, resolutions },
      });
    });
  }
}

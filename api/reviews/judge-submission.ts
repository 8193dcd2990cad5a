import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { MayReview } from './may-review.js';
import type { ReviewedSubmission } from './may-review.js';
import { reviewProblems } from './reviews.errors.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { DecisionsStore } from '../decisions/decisions.store.js';

export interface FirstJudgement {
  readonly verdict: 'plausible' | 'doubtful';
  readonly words: string;
}

/** A reviewer says what they think of a revision before they see what others found of the same variant; once, and it stands. */
@Injectable()
export class JudgeSubmission {
  constructor(
    private readonly mayReview: MayReview,
    private readonly store: DecisionsStore,
    private readonly decisions: DecisionsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, reviewed: ReviewedSubmission, { verdict, words }: FirstJudgement): Promise<void> {
    await this.mayReview.run(actor, reviewed, 'judge', async (tx, { revisionId, revision }) => {
      if (await this.decisions.hasJudged(revisionId, actor.accountId)) throw new Problem(reviewProblems['reviews/judged']);
      await this.store.addJudgement(tx, { revisionId, reviewerId: actor.accountId, verdict, words, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'submission.judged',
        objectType: 'submission',
        objectId: reviewed.reference,
        after: { revision, verdict, words },
      });
    });
  }
}

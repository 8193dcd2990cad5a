/**
 * Reviews: the decision of a second person on what a tester handed in, and the questions that go back.
 * States moved: submitted → accepted | returned | refused; returned → refused; accepted → withdrawn.
 * Reviewers decide, never on their own submission nor with an interest in the maker; editors withdraw what another person proposed, under the same two rules.
 * A reviewer or an editor closes a returned one that will not come back.
 * Testers answer the questions on their own submissions.
 * A review is claimed by one person for a while; earlier results are shown after the first judgement alone.
 * Reviews, judgements, specimens set aside and withdrawals are append-only; a finding is answered once.
 */
import { Module } from '@nestjs/common';
import { AccountsModule } from '../accounts/accounts.module.js';
import { CatalogueModule } from '../catalogue/catalogue.module.js';
import { InterestsModule } from '../interests/interests.module.js';
import { DecisionsModule } from '../decisions/decisions.module.js';
import { FindingsModule } from '../findings/findings.module.js';
import { ProposalsModule } from '../proposals/proposals.module.js';
import { SubmissionsModule } from '../submissions/submissions.module.js';
import { AcceptSubmission } from './accept-submission.js';
import { AnswerQuery } from './answer-query.js';
import { ClaimReview } from './claim-review.js';
import { EarlierResultsReadModel } from './earlier-results.read-model.js';
import { JudgeSubmission } from './judge-submission.js';
import { MayReview } from './may-review.js';
import { QueriesController } from './queries.controller.js';
import { QueriesReadModel } from './queries.read-model.js';
import { RefuseSubmission } from './refuse-submission.js';
import { ResolveFinding } from './resolve-finding.js';
import { ReturnSubmission } from './return-submission.js';
import { ReviewWorkController } from './review-work.controller.js';
import { ReviewsController } from './reviews.controller.js';
import { WithdrawSubmission } from './withdraw-submission.js';
import { PossibleActionsReadModel } from './possible-actions.read-model.js';

@Module({
  imports: [AccountsModule, CatalogueModule, DecisionsModule, FindingsModule, InterestsModule, ProposalsModule, SubmissionsModule],
  controllers: [ReviewsController, ReviewWorkController, QueriesController],
  providers: [
    MayReview,
    AcceptSubmission,
    ReturnSubmission,
    RefuseSubmission,
    WithdrawSubmission,
    ResolveFinding,
    AnswerQuery,
    ClaimReview,
    JudgeSubmission,
    EarlierResultsReadModel,
    PossibleActionsReadModel,
    QueriesReadModel,
  ],
})
export class ReviewsModule {}

import { Body, Controller, Delete, Get, Param, Post } from '@nestjs/common';
import type { z } from 'zod';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { SUBMISSION_ACTIONS } from '../contract/submission-actions.js';
import type { ActionName } from '../contract/submission-actions.js';
import { SubmissionViewsReadModel } from '../submissions/views/submission-views.read-model.js';
import { ClaimReview } from './claim-review.js';
import { EarlierResultsReadModel } from './earlier-results.read-model.js';
import { JudgeSubmission } from './judge-submission.js';
import * as schemas from '../contract/endpoints/reviews.js';
import { PossibleActionsReadModel } from './possible-actions.read-model.js';

/** What goes before a decision: who does it, what is possible, the first judgement, what others found. */
@Controller('v1')
export class ReviewWorkController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly claim: ClaimReview,
    private readonly judge: JudgeSubmission,
    private readonly earlier: EarlierResultsReadModel,
    private readonly possible: PossibleActionsReadModel,
  ) {}

  @Get('submission-actions')
  @Endpoint({ summary: 'Who may do what with a submission, and in which states.', allow: 'anyone', answer: schemas.actionTableResponse })
  getActionTable() {
    const names = Object.keys(SUBMISSION_ACTIONS) as ActionName[];
    return { items: names.map((action) => ({ action, ...SUBMISSION_ACTIONS[action] })), nextCursor: null };
  }

  @Get('submissions/:reference/actions')
  @Endpoint({
    summary: 'What you can do with a submission now, and why not, with counts.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: schemas.possibleActionsResponse,
  })
  async getActions(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    return { items: await this.possible.of(actor, reference), nextCursor: null };
  }

  @Post('submissions/:reference/claim')
  @Endpoint({
    summary: `Takes the review of a submission upon oneself for ${schemas.CLAIM_HOURS} hours.`,
    allow: ['reviewer'],
    status: 201,
    answer: schemas.possibleActionsResponse,
    needsIfMatch: true,
  })
  async claimReview(@CurrentActor() actor: Actor, @Param('reference') reference: string, @IfMatch() version: number) {
    await this.claim.run(actor, { reference, version });
    return this.getActions(actor, reference);
  }

  @Delete('submissions/:reference/claim')
  @Endpoint({ summary: 'Gives a claimed review back.', allow: ['reviewer'], status: 204, answer: null, needsIfMatch: true })
  giveReviewBack(@CurrentActor() actor: Actor, @Param('reference') reference: string, @IfMatch() version: number) {
    return this.claim.giveBack(actor, { reference, version });
  }

  @Post('submissions/:reference/judgements')
  @Endpoint({
    summary: 'Says what one thinks of a submission before earlier results are shown.',
    allow: ['reviewer'],
    status: 201,
    answer: schemas.earlierResultsResponse,
    needsIfMatch: true,
  })
  async judgeSubmission(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: schemas.judgementRequest }) judgement: z.infer<typeof schemas.judgementRequest>,
  ) {
    await this.judge.run(actor, { reference, version }, judgement);
    return this.getEarlierResults(actor, reference);
  }

  @Get('submissions/:reference/earlier-results')
  @Endpoint({
    summary: 'What others found of the same variant; shown after your first judgement.',
    allow: ['reviewer'],
    answer: schemas.earlierResultsResponse,
  })
  async getEarlierResults(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    return { items: await this.earlier.of(actor, reference), nextCursor: null };
  }

  @Get('submissions/:reference/revisions/:number/changes')
  @Endpoint({
    summary: 'What a revision says otherwise than the one before.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: schemas.changesResponse,
  })
  async getRevisionChanges(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @Param('number', { schema: schemas.revisionParameter }) number: number,
  ) {
    return { items: await this.views.changes(actor, reference, number), nextCursor: null };
  }
}

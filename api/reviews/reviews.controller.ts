import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { z } from 'zod';
import type { Actor } from '../platform/http/access.js';
import { CurrentActor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { secondedRequest } from '../contract/endpoints/proposals.js';
import { SubmissionViewsReadModel } from '../submissions/views/submission-views.read-model.js';
import { submissionResponse } from '../contract/endpoints/submissions.js';
import { AcceptSubmission } from './accept-submission.js';
import type { ReviewedSubmission } from './may-review.js';
import { RefuseSubmission } from './refuse-submission.js';
import { ResolveFinding } from './resolve-finding.js';
import { ReturnSubmission } from './return-submission.js';
import {
  closureRequest,
  findingParameter,
  queueQuery,
  queueResponse,
  resolutionRequest,
  reviewRequest,
} from '../contract/endpoints/reviews.js';
import type { ReviewRequest } from '../contract/endpoints/reviews.js';
import { WithdrawSubmission } from './withdraw-submission.js';

@Controller('v1')
export class ReviewsController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly accept: AcceptSubmission,
    private readonly giveBack: ReturnSubmission,
    private readonly refuse: RefuseSubmission,
    private readonly withdraw: WithdrawSubmission,
    private readonly resolve: ResolveFinding,
  ) {}

  @Get('review-queue')
  @Endpoint({
    summary: 'Lists submitted submissions of other testers, oldest first, with figures, findings and specimens.',
    allow: ['reviewer'],
    answer: queueResponse,
  })
  listReviewQueue(@CurrentActor() actor: Actor, @Query({ schema: queueQuery }) { limit, cursor }: z.infer<typeof queueQuery>) {
    return this.views.queue(actor, limit, cursor);
  }

  @Post('submissions/:reference/reviews')
  @Endpoint({
    summary: 'Accepts, returns or refuses a submission of another tester.',
    allow: ['reviewer'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
  })
  async reviewSubmission(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: reviewRequest }) review: ReviewRequest,
  ) {
    await this.decide(actor, { reference, version }, review);
    return this.views.one(actor, reference);
  }

  @Post('submissions/:reference/closure')
  @Endpoint({
    summary: 'Refuses a returned submission that will not come back, with the reason.',
    allow: ['reviewer', 'editor'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
  })
  async closeReturned(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: closureRequest }) { reason }: z.infer<typeof closureRequest>,
  ) {
    await this.refuse.run(actor, { reference, version }, reason, 'close');
    return this.views.one(actor, reference);
  }

  @Post('submissions/:reference/withdrawal')
  @Endpoint({
    summary: 'Takes an accepted submission out of the results, as another person proposed.',
    allow: ['editor'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
  })
  async withdrawSubmission(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: secondedRequest }) { proposal }: z.infer<typeof secondedRequest>,
  ) {
    await this.withdraw.run(actor, { reference, version }, proposal);
    return this.views.one(actor, reference);
  }

  @Post('submissions/:reference/findings/:id/resolution')
  @Endpoint({
    summary: 'Answers a finding that came up after the submission was accepted.',
    allow: ['reviewer'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
  })
  async resolveFinding(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @Param('id', { schema: findingParameter }) id: string,
    @IfMatch() version: number,
    @Body({ schema: resolutionRequest }) { words }: z.infer<typeof resolutionRequest>,
  ) {
    await this.resolve.run(actor, { reference, version }, id, words);
    return this.views.one(actor, reference);
  }

  private decide(actor: Actor, reviewed: ReviewedSubmission, { decision, reason, query, ...acceptance }: ReviewRequest): Promise<void> {
    if (decision === 'accepted') return this.accept.run(actor, reviewed, { reason, ...acceptance });
    if (query !== null) return this.giveBack.run(actor, reviewed, { reason, query });
    return this.refuse.run(actor, reviewed, reason ?? '');
  }
}

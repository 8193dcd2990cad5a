import { Controller, Get, Param, Post, Query, Req } from '@nestjs/common';
import { ApiBody, ApiConsumes } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { Actor } from '../platform/http/access.js';
import { CurrentActor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { HandInRevision } from './hand-in/hand-in-revision.js';
import { csvColumnsAnswer } from './intake/csv-columns.js';
import { HandInSubmissions } from './hand-in/hand-in-submissions.js';
import { PreviewSubmissions } from './hand-in/preview-submissions.js';
import { withIntake } from './intake/read-intake.js';
import { TakeBackSubmission } from './hand-in/take-back-submission.js';
import { SubmissionViewsReadModel } from './views/submission-views.read-model.js';
import {
  csvColumnsResponse,
  handedInAnswer,
  handInBody,
  handInQuery,
  previewAnswer,
  submissionResponse,
  submissionsQuery,
  submissionsResponse,
} from '../contract/endpoints/submissions.js';
import type { SubmissionsQuery } from '../contract/endpoints/submissions.js';

const MEDIA_TYPES = ['application/json', 'text/csv', 'multipart/form-data'] as const;

@Controller('v1/submissions')
export class SubmissionsController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly handIn: HandInSubmissions,
    private readonly handInAgain: HandInRevision,
    private readonly preview: PreviewSubmissions,
    private readonly takeBack: TakeBackSubmission,
  ) {}

  @Post()
  @ApiConsumes(...MEDIA_TYPES)
  @ApiBody(handInBody)
  @Endpoint({
    summary: 'Hands in one submission as JSON, or a CSV file of many; all of the file or nothing, unless partial.',
    allow: ['tester'],
    status: 201,
    answer: handedInAnswer,
    takes: 'files',
  })
  async handInSubmissions(
    @CurrentActor() actor: Actor,
    @Req() request: FastifyRequest,
    @Query({ schema: handInQuery }) { partial }: z.infer<typeof handInQuery>,
  ) {
    return withIntake(request, async (intake) => {
      const { references, ...refusals } = await this.handIn.run(actor, intake, partial);
      if (!intake.isFile) return this.views.one(actor, references[0] ?? '');
      return { submissions: await this.views.handedIn(references), ...refusals };
    });
  }

  @Post('preview')
  @ApiConsumes(...MEDIA_TYPES)
  @ApiBody(handInBody)
  @Endpoint({
    summary: 'Computes the figures and findings of what would be handed in; stores nothing of it, and counts previews of each spool.',
    allow: ['tester'],
    answer: previewAnswer,
    takes: 'files',
  })
  async previewSubmissions(@CurrentActor() actor: Actor, @Req() request: FastifyRequest) {
    return withIntake(request, async (intake) => {
      const submissions = await this.preview.run(actor, intake);
      return intake.isFile ? { submissions } : submissions[0];
    });
  }

  @Get('csv-columns')
  @Endpoint({ summary: 'The columns of a hand-in file.', allow: 'anyone', answer: csvColumnsResponse })
  getCsvColumns() {
    return csvColumnsAnswer();
  }

  @Get()
  @Endpoint({
    summary: 'Lists submissions, newest first: the own ones; all but drafts for reviewers and editors.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: submissionsResponse,
  })
  listSubmissions(@CurrentActor() actor: Actor, @Query({ schema: submissionsQuery }) query: SubmissionsQuery) {
    return this.views.list(actor, query);
  }

  @Get(':reference')
  @Endpoint({
    summary: 'Reads one submission with its figures, findings, specimens and decisions.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: submissionResponse,
  })
  readSubmission(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    return this.views.one(actor, reference);
  }

  @Post(':reference/taking-back')
  @Endpoint({
    summary: 'Takes an own submission back, until a reviewer has claimed or judged it, or after it was returned; it stays on record.',
    allow: ['tester'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
  })
  async takeSubmissionBack(@CurrentActor() actor: Actor, @Param('reference') reference: string, @IfMatch() version: number) {
    await this.takeBack.run(actor, reference, version);
    return this.views.one(actor, reference);
  }

  @Post(':reference/revisions')
  @ApiConsumes(...MEDIA_TYPES)
  @ApiBody(handInBody)
  @Endpoint({
    summary: 'Hands in a draft, or a returned submission again as its next revision: as JSON, or as a CSV file of this one.',
    allow: ['tester'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
    takes: 'files',
  })
  async handInNextRevision(
    @CurrentActor() actor: Actor,
    @Req() request: FastifyRequest,
    @Param('reference') reference: string,
    @IfMatch() version: number,
  ) {
    await withIntake(request, (intake) => this.handInAgain.run(actor, reference, version, intake));
    return this.views.one(actor, reference);
  }
}

import { Body, Controller, Get, Param, Post, Query, Req } from '@nestjs/common';
import { ApiBody, ApiConsumes } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { Actor } from '../platform/http/access.js';
import { CurrentActor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/if-match.js';
import { HandInRevision } from './hand-in-revision.js';
import { CSV_COLUMNS } from './import/csv-columns.js';
import { HandInSubmissions } from './hand-in-submissions.js';
import { PreviewSubmissions } from './preview-submissions.js';
import { withIntake } from './read-intake.js';
import { submissionContent } from './submission-content.js';
import type { SubmissionContent } from './submission-content.js';
import { SubmissionViewsReadModel } from './submission-views.read-model.js';
import {
  csvColumnsResponse,
  handedInAnswer,
  handInBody,
  handInQuery,
  previewAnswer,
  submissionResponse,
  submissionsQuery,
  submissionsResponse,
} from './submissions.schemas.js';
import type { SubmissionsQuery } from './submissions.schemas.js';

const MEDIA_TYPES = ['application/json', 'text/csv', 'multipart/form-data'] as const;

@Controller('v1/submissions')
export class SubmissionsController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly handIn: HandInSubmissions,
    private readonly handInAgain: HandInRevision,
    private readonly preview: PreviewSubmissions,
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
      return { submissions: await this.views.named(references), ...refusals };
    });
  }

  @Post('preview')
  @ApiConsumes(...MEDIA_TYPES)
  @ApiBody(handInBody)
  @Endpoint({
    summary: 'Computes the figures and findings of what would be handed in; stores nothing.',
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
    const items = CSV_COLUMNS.map(({ name, isRequired, meaning, example, role }) => ({
      name,
      isRequired,
      meaning,
      example,
      carriesReading: role !== undefined,
    }));
    return { items, nextCursor: null };
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

  @Post(':reference/revisions')
  @Endpoint({
    summary: 'Hands in a draft, or a returned submission again as its next revision.',
    allow: ['tester'],
    status: 201,
    answer: submissionResponse,
    needsIfMatch: true,
    takes: 'readings',
  })
  async handInNextRevision(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: submissionContent }) content: SubmissionContent,
  ) {
    await this.handInAgain.run(actor, reference, version, content);
    return this.views.one(actor, reference);
  }
}

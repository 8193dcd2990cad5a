import { Body, Controller, Delete, Get, Param, Post, Put } from '@nestjs/common';
import { z } from 'zod';
import type { Actor } from '../../platform/http/access.js';
import { CurrentActor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { DeleteDraft } from './delete-draft.js';
import { SaveDraft } from './save-draft.js';
import { SubmissionViewsReadModel } from '../views/submission-views.read-model.js';
import { draftBeginning, draftHistoryResponse, draftRequest } from '../../contract/endpoints/drafts.js';
import { submissionResponse } from '../../contract/endpoints/submissions.js';

@Controller('v1/drafts')
export class DraftsController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly draft: SaveDraft,
    private readonly deletion: DeleteDraft,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Begins a draft, from a spool and a method on; it is kept as typed.',
    allow: ['tester'],
    status: 201,
    answer: submissionResponse,
    takes: 'much',
  })
  async beginDraft(@CurrentActor() actor: Actor, @Body({ schema: draftBeginning }) { content }: z.infer<typeof draftBeginning>) {
    return this.views.one(actor, await this.draft.begin(actor, content));
  }

  @Put(':reference')
  @Endpoint({ summary: 'Saves a draft as typed.', allow: ['tester'], answer: submissionResponse, needsIfMatch: true, takes: 'much' })
  async saveDraft(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Body({ schema: draftRequest }) { content }: z.infer<typeof draftRequest>,
  ) {
    await this.draft.run(actor, reference, version, content);
    return this.views.one(actor, reference);
  }

  @Get(':reference/history')
  @Endpoint({
    summary: 'What an own draft was before, the last fifty saves, newest first.',
    allow: ['tester'],
    answer: draftHistoryResponse,
  })
  async getDraftHistory(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    return { items: await this.views.draftHistory(actor, reference), nextCursor: null };
  }

  @Delete(':reference')
  @Endpoint({ summary: 'Takes a draft away.', allow: ['tester'], status: 204, answer: null, needsIfMatch: true })
  deleteDraft(@CurrentActor() actor: Actor, @Param('reference') reference: string, @IfMatch() version: number) {
    return this.deletion.run(actor, reference, version);
  }
}

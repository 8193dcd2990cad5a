import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import { z } from 'zod';
import type { Actor } from '../platform/http/access.js';
import { CurrentActor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { AnswerQuery } from './answer-query.js';
import { QueriesReadModel } from './queries.read-model.js';
import { answerRequest, queriesQuery, queriesResponse, queryParameter, queryResponse } from '../contract/endpoints/reviews.js';
import type { QueriesQuery } from '../contract/endpoints/reviews.js';

@Controller('v1/queries')
export class QueriesController {
  constructor(
    private readonly queries: QueriesReadModel,
    private readonly answerQuery: AnswerQuery,
  ) {}

  @Get()
  @Endpoint({ summary: 'Lists the questions on your own submissions, newest first.', allow: ['tester'], answer: queriesResponse })
  listQueries(@CurrentActor() actor: Actor, @Query({ schema: queriesQuery }) page: QueriesQuery) {
    return this.queries.ofTester(actor.accountId, page);
  }

  @Post(':id/answer')
  @Endpoint({ summary: 'Answers a question on an own submission, once.', allow: ['tester'], status: 201, answer: queryResponse })
  async answerOwnQuery(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: queryParameter }) id: string,
    @Body({ schema: answerRequest }) { answer }: z.infer<typeof answerRequest>,
  ) {
    await this.answerQuery.run(actor, id, answer);
    return this.queries.one(id);
  }
}

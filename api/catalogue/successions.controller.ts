import { Body, Controller, Get, Post } from '@nestjs/common';
import * as schemas from '../contract/endpoints/catalogue.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { Succeed } from './succeed.js';
import { SuccessionsReadModel } from './successions.read-model.js';

@Controller('v1/catalogue/successions')
export class SuccessionsController {
  constructor(
    private readonly succeed: Succeed,
    private readonly successions: SuccessionsReadModel,
  ) {}

  @Get()
  @Endpoint({ summary: 'What took whose place.', allow: ['editor'], answer: schemas.successionsResponse })
  async getSuccessions() {
    return { items: await this.successions.list(), nextCursor: null };
  }

  @Post()
  @Endpoint({
    summary: 'Say what took the place of a maker, line or variant: the old slug stays, and leads there for ever.',
    allow: ['editor'],
    status: 201,
    answer: schemas.successionsResponse,
  })
  async addSuccession(@CurrentActor() actor: Actor, @Body({ schema: schemas.successionRequest }) request: schemas.SuccessionRequest) {
    await this.succeed.run(actor, request);
    await this.successions.catchUp();
    return this.getSuccessions();
  }
}

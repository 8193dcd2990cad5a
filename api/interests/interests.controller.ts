import { Body, Controller, Get, Post } from '@nestjs/common';
import * as schemas from '../contract/endpoints/accounts.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { DeclareInterest } from './declare-interest.js';
import { InterestsReadModel } from './interests.read-model.js';

@Controller('v1/interests')
export class InterestsController {
  constructor(
    private readonly declaring: DeclareInterest,
    private readonly interests: InterestsReadModel,
  ) {}

  @Post()
  @Endpoint({ summary: 'Declare a tie to a maker.', allow: 'signedIn', status: 201, answer: schemas.interestResponse })
  postInterest(@CurrentActor() actor: Actor, @Body({ schema: schemas.interestRequest }) input: schemas.InterestRequest) {
    return this.declaring.run(actor, input);
  }

  @Get()
  @Endpoint({ summary: 'Your declared ties.', allow: 'signedIn', answer: schemas.interestsResponse })
  async getInterests(@CurrentActor() actor: Actor) {
    return { items: await this.interests.list(actor.accountId), nextCursor: null };
  }
}

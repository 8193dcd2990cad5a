import { Body, Controller, Get, Post } from '@nestjs/common';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { Propose } from './propose.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import * as schemas from '../contract/endpoints/proposals.js';

@Controller('v1/proposals')
export class ProposalsController {
  constructor(
    private readonly propose: Propose,
    private readonly proposals: ProposalsReadModel,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Proposes a withdrawal or a re-identification, which another person carries out.',
    allow: ['reviewer', 'editor'],
    status: 201,
    answer: schemas.proposalResponse,
  })
  async postProposal(@CurrentActor() actor: Actor, @Body({ schema: schemas.proposalRequest }) proposal: schemas.ProposalRequest) {
    return this.proposals.one(await this.propose.run(actor, proposal));
  }

  @Get()
  @Endpoint({ summary: 'Proposals, newest first.', allow: ['reviewer', 'editor'], answer: schemas.proposalsResponse })
  async getProposals() {
    return { items: await this.proposals.all(), nextCursor: null };
  }
}

import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import type { z } from 'zod';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { EndProposal } from './end-proposal.js';
import { Propose } from './propose.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import * as schemas from '../contract/endpoints/proposals.js';

@Controller('v1/proposals')
export class ProposalsController {
  constructor(
    private readonly propose: Propose,
    private readonly end: EndProposal,
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
    return this.proposals.one(actor, await this.propose.run(actor, proposal));
  }

  @Get()
  @Endpoint({ summary: 'Proposals, newest first.', allow: ['reviewer', 'editor'], answer: schemas.proposalsResponse })
  getProposals(@CurrentActor() actor: Actor, @Query({ schema: schemas.proposalsQuery }) query: schemas.ProposalsQuery) {
    return this.proposals.page(actor, query);
  }

  @Post(':id/refusal')
  @Endpoint({ summary: 'Declines a proposal of another person.', allow: ['editor'], status: 201, answer: schemas.proposalResponse })
  async declineProposal(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.proposalParameter }) id: string,
    @Body({ schema: schemas.proposalEndRequest }) { reason }: z.infer<typeof schemas.proposalEndRequest>,
  ) {
    await this.end.run(actor, id, 'declined', reason);
    return this.proposals.one(actor, id);
  }

  @Post(':id/cancellation')
  @Endpoint({ summary: 'Calls off an own proposal.', allow: ['reviewer', 'editor'], status: 201, answer: schemas.proposalResponse })
  async callOffProposal(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.proposalParameter }) id: string,
    @Body({ schema: schemas.proposalEndRequest }) { reason }: z.infer<typeof schemas.proposalEndRequest>,
  ) {
    await this.end.run(actor, id, 'calledOff', reason);
    return this.proposals.one(actor, id);
  }
}

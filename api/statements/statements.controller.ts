import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import type { z } from 'zod';
import * as schemas from '../contract/endpoints/statements.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { EndRemark } from './end-remark.js';
import { Remark } from './remark.js';
import { StateHouse } from './state-house.js';
import { StatementsReadModel } from './statements.read-model.js';

@Controller('v1')
export class StatementsController {
  constructor(
    private readonly stateHouse: StateHouse,
    private readonly remark: Remark,
    private readonly endRemark: EndRemark,
    private readonly statements: StatementsReadModel,
  ) {}

  @Get('house-statement')
  @Endpoint({
    summary: 'Who publishes, as the house says it now, and what is still to be said.',
    allow: ['editor', 'admin'],
    answer: schemas.houseStatementResponse,
  })
  getHouseStatement() {
    return this.statements.house();
  }

  @Post('house-statement')
  @Endpoint({
    summary: 'Says who publishes, from now on; what was said before stays on record.',
    allow: ['editor', 'admin'],
    status: 201,
    answer: schemas.houseStatementResponse,
  })
  async postHouseStatement(
    @CurrentActor() actor: Actor,
    @Body({ schema: schemas.houseStatementRequest }) statement: schemas.HouseStatementRequest,
  ) {
    await this.stateHouse.run(actor, statement);
    return this.statements.house();
  }

  @Get('remarks')
  @Endpoint({
    summary: 'Caveats and replies, those that stand first.',
    allow: ['reviewer', 'editor'],
    answer: schemas.remarksResponse,
  })
  async getRemarks() {
    return { items: await this.statements.remarks(), nextCursor: null };
  }

  @Post('remarks')
  @Endpoint({
    summary: 'Writes a caveat, or enters the reply of a maker; it goes into the next release.',
    allow: ['editor'],
    status: 201,
    answer: schemas.remarkResponse,
  })
  async postRemark(@CurrentActor() actor: Actor, @Body({ schema: schemas.remarkRequest }) request: schemas.RemarkRequest) {
    return this.statements.remark(await this.remark.run(actor, request));
  }

  @Post('remarks/:id/successor')
  @Endpoint({
    summary: 'Puts other words in the place of a remark, with the reason.',
    allow: ['editor'],
    status: 201,
    answer: schemas.remarkResponse,
  })
  async postRemarkSuccessor(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.remarkParameter }) id: string,
    @Body({ schema: schemas.remarkSuccessorRequest }) request: z.infer<typeof schemas.remarkSuccessorRequest>,
  ) {
    return this.statements.remark(await this.endRemark.supersede(actor, id, request));
  }

  @Post('remarks/:id/ending')
  @Endpoint({ summary: 'Ends a remark, with the reason.', allow: ['editor'], status: 201, answer: schemas.remarkResponse })
  async postRemarkEnding(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.remarkParameter }) id: string,
    @Body({ schema: schemas.remarkEndRequest }) { reason }: z.infer<typeof schemas.remarkEndRequest>,
  ) {
    await this.endRemark.run(actor, id, reason);
    return this.statements.remark(id);
  }
}

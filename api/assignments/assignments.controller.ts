import { Body, Controller, Delete, Get, Param, Post } from '@nestjs/common';
import * as schemas from '../contract/endpoints/assignments.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { Assign } from './assign.js';
import { AssignmentsReadModel } from './assignments.read-model.js';

@Controller('v1')
export class AssignmentsController {
  constructor(
    private readonly assign: Assign,
    private readonly assignments: AssignmentsReadModel,
  ) {}

  @Post('editions/:edition/assignments')
  @Endpoint({
    summary: 'Asks a tester to pull spools by a method; they see the codes alone.',
    allow: ['editor'],
    status: 201,
    answer: schemas.assignmentsResponse,
  })
  async postAssignments(
    @CurrentActor() actor: Actor,
    @Param('edition') edition: string,
    @Body({ schema: schemas.assignmentRequest }) request: schemas.AssignmentRequest,
  ) {
    await this.assign.run(actor, edition, request);
    return this.getAssignments(edition);
  }

  @Get('editions/:edition/assignments')
  @Endpoint({ summary: 'What testers are asked to pull in an edition.', allow: ['editor'], answer: schemas.assignmentsResponse })
  async getAssignments(@Param('edition') edition: string) {
    return { items: await this.assignments.ofEdition(edition), nextCursor: null };
  }

  @Get('assignments')
  @Endpoint({ summary: 'What you are asked to pull, in open editions.', allow: ['tester'], answer: schemas.ownAssignmentsResponse })
  async getOwnAssignments(@CurrentActor() actor: Actor) {
    return { items: await this.assignments.ofTester(actor.accountId), nextCursor: null };
  }

  @Delete('assignments/:id')
  @Endpoint({ summary: 'Takes an assignment back.', allow: ['editor'], status: 204, answer: null })
  deleteAssignment(@CurrentActor() actor: Actor, @Param('id', { schema: schemas.assignmentParameter }) id: string): Promise<void> {
    return this.assign.takeBack(actor, id);
  }
}

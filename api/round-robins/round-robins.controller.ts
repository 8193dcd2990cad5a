import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { HandInCell } from './hand-in-cell.js';
import { PlanRoundRobin } from './plan-round-robin.js';
import { reportOf } from '../reckoning/rigs/round-robin-report.js';
import { RoundRobinsReadModel } from './round-robins.read-model.js';
import * as schemas from '../contract/endpoints/round-robins.js';

@Controller('v1/round-robins')
export class RoundRobinsController {
  constructor(
    private readonly plan: PlanRoundRobin,
    private readonly handIn: HandInCell,
    private readonly robins: RoundRobinsReadModel,
  ) {}

  @Post()
  @Endpoint({ summary: 'Plans a round robin.', allow: ['editor'], status: 201, answer: schemas.roundRobinResponse })
  async postRoundRobin(@CurrentActor() actor: Actor, @Body({ schema: schemas.roundRobinRequest }) input: schemas.RoundRobinRequest) {
    await this.plan.run(actor, input);
    return this.getRoundRobin(actor, input.slug);
  }

  @Get()
  @Endpoint({ summary: 'Round robins, newest first.', allow: ['tester', 'reviewer', 'editor'], answer: schemas.roundRobinsResponse })
  async getRoundRobins() {
    return { items: await this.robins.list(), nextCursor: null };
  }

  @Get(':slug')
  @Endpoint({
    summary: 'A round robin with its report; a tester sees the own readings alone until it is closed, and the others by number.',
    allow: ['tester', 'reviewer', 'editor'],
    answer: schemas.roundRobinResponse,
  })
  async getRoundRobin(@CurrentActor() actor: Actor, @Param('slug') slug: string) {
    const found = await this.robins.one(slug);
    if (!found) throw new Problem(platformProblems['request/not-found'], `No round robin is called ${slug}.`);
    const { version, testers, evidence } = found;
    const seesAll = actor.roles.includes('editor') || actor.roles.includes('reviewer');
    const yourNumber = testers.find(({ testerId }) => testerId === actor.accountId)?.number ?? null;
    const isHidden = !seesAll && evidence.state !== 'closed';
    const shown = isHidden ? { ...evidence, cells: evidence.cells.filter(({ tester }) => tester === yourNumber) } : evidence;
    const names = seesAll ? testers.map(({ number, name }) => ({ number, name })) : [];
    return { state: evidence.state, version, yourNumber, names, report: reportOf(shown) };
  }

  @Post(':slug/opening')
  @Endpoint({
    summary: 'Opens a round robin for its testers.',
    allow: ['editor'],
    status: 201,
    answer: schemas.roundRobinResponse,
    needsIfMatch: true,
  })
  async openRoundRobin(@CurrentActor() actor: Actor, @Param('slug') slug: string, @IfMatch() version: number) {
    await this.plan.move(actor, slug, version, 'open');
    return this.getRoundRobin(actor, slug);
  }

  @Post(':slug/closure')
  @Endpoint({
    summary: 'Closes a round robin; its report is for all who took part.',
    allow: ['editor'],
    status: 201,
    answer: schemas.roundRobinResponse,
    needsIfMatch: true,
  })
  async closeRoundRobin(@CurrentActor() actor: Actor, @Param('slug') slug: string, @IfMatch() version: number) {
    await this.plan.move(actor, slug, version, 'closed');
    return this.getRoundRobin(actor, slug);
  }

  @Post(':slug/cells')
  @Endpoint({
    summary: 'Hands in what one pulled of one spool: all of it, once.',
    allow: ['tester'],
    status: 201,
    answer: schemas.roundRobinResponse,
  })
  async postCell(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @Body({ schema: schemas.cellRequest }) cell: schemas.CellRequest,
  ) {
    await this.handIn.run(actor, slug, cell);
    return this.getRoundRobin(actor, slug);
  }
}

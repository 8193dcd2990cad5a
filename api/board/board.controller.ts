import { Controller, Get, Param, Post, Query } from '@nestjs/common';
import { boardResponse } from '../contract/endpoints/board.js';
import { editionResponse } from '../contract/endpoints/editions.js';
import { planQuery, planResponse } from '../contract/endpoints/planning.js';
import type { PlanQuery } from '../contract/endpoints/planning.js';
import { EditionObstacles } from '../editions/obstacles.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { ResultsNow } from '../releases/results-now.read-model.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { boardEntries } from './board-entries.js';
import { CloseEdition } from './close-edition.js';
import { closingObstacles } from './closing-obstacles.js';
import { PlanMoreTests } from './plan-more-tests.js';

@Controller('v1')
export class BoardController {
  constructor(
    private readonly closing: CloseEdition,
    private readonly planning: PlanMoreTests,
    private readonly results: ResultsNow,
    private readonly editions: EditionsReadModel,
    private readonly obstacles: EditionObstacles,
    private readonly submissions: SubmissionsReadModel,
  ) {}

  @Get('editions/:edition/board')
  @Endpoint({ summary: 'What is missing per entry, and why.', allow: ['editor'], answer: boardResponse })
  async getBoard(@Param('edition') slug: string) {
    const computed = await this.results.of(slug);
    const { id, state } = await this.editions.standOf(slug);
    const unsettled = await this.submissions.unsettledIn(id);
    return {
      edition: slug,
      state,
      submissions: await this.submissions.countByState(id),
      inDoubt: unsettled.inDoubt.length,
      standsInTheWay:
        state === 'planned'
          ? await this.obstacles.toOpening(slug)
          : [...(await this.obstacles.ofDivisions(slug)), ...closingObstacles(unsettled)],
      entries: boardEntries(computed),
    };
  }

  @Get('editions/:edition/plan')
  @Endpoint({
    summary: 'What more rigs, testers, submissions or specimens would buy in a category, by simulation from what is accepted.',
    allow: ['editor'],
    answer: planResponse,
  })
  getPlan(@Param('edition') slug: string, @Query({ schema: planQuery }) query: PlanQuery) {
    return this.planning.run(slug, query);
  }

  @Post('editions/:edition/closure')
  @Endpoint({ summary: 'Close: no more submissions.', allow: ['editor'], status: 201, answer: editionResponse, needsIfMatch: true })
  async postClosure(@CurrentActor() actor: Actor, @Param('edition') slug: string, @IfMatch() version: number) {
    await this.closing.run(actor, slug, version);
    const [edition] = await this.editions.editions(slug);
    if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    return edition;
  }
}

import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { KeyReadings } from '../audit/key-readings.store.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { DrawRetests } from './draw-retests.js';
import { RetestsReadModel } from './retests.read-model.js';
import * as schemas from '../contract/endpoints/retests.js';

@Controller('v1/editions/:edition/retests')
export class RetestsController {
  constructor(
    private readonly draw: DrawRetests,
    private readonly retests: RetestsReadModel,
    private readonly keyReadings: KeyReadings,
  ) {}

  @Post()
  @Endpoint({
    summary: 'Draws accepted results to be tested again, blind; once an edition.',
    allow: ['editor'],
    status: 201,
    answer: schemas.retestsResponse,
  })
  async drawRetests(
    @CurrentActor() actor: Actor,
    @Param('edition') edition: string,
    @Body({ schema: schemas.drawRequest }) { percent }: schemas.DrawRequest,
  ) {
    await this.draw.run(actor, edition, percent);
    return this.getRetests(actor, edition);
  }

  @Get()
  @Endpoint({ summary: 'What was drawn to be tested again, and whether it was.', allow: ['editor'], answer: schemas.retestsResponse })
  async getRetests(@CurrentActor() actor: Actor, @Param('edition') edition: string) {
    const draw = await this.retests.ofEdition(edition);
    const items = (draw?.drawn ?? []).map(({ original, spool, method, again }) => ({ original, spool, method, isDone: again !== null }));
    await this.keyReadings.note(actor, 'retest', { codes: items.map(({ spool }) => spool) });
    return { seed: draw?.seed ?? null, percent: draw?.percent ?? null, items, nextCursor: null };
  }
}

import { Body, Controller, Get, Param, Post, Query } from '@nestjs/common';
import type { z } from 'zod';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { AddControlLine } from './add-control-line.js';
import { AddControlPull } from './add-control-pull.js';
import { toPoint } from '../reckoning/rigs/chart-document.js';
import { chartsOf } from '../reckoning/rigs/control-charts.js';
import { ControlPullsReadModel } from './control-pulls.read-model.js';
import * as schemas from '../contract/endpoints/control-pulls.js';
import { rigStates } from '../reckoning/rigs/rig-states.js';
import { StrikeControlPull } from './strike-control-pull.js';

@Controller('v1')
export class ControlPullsController {
  constructor(
    private readonly addLine: AddControlLine,
    private readonly addPull: AddControlPull,
    private readonly strike: StrikeControlPull,
    private readonly controlPulls: ControlPullsReadModel,
    private readonly instruments: InstrumentsReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  @Post('control-lines')
  @Endpoint({ summary: 'Put a control line on record.', allow: ['editor'], status: 201, answer: schemas.controlLinesResponse })
  async postControlLine(@CurrentActor() actor: Actor, @Body({ schema: schemas.controlLineRequest }) line: schemas.ControlLineRequest) {
    await this.addLine.run(actor, line);
    return this.getControlLines();
  }

  @Get('control-lines')
  @Endpoint({ summary: 'Control lines, by code.', allow: 'signedIn', answer: schemas.controlLinesResponse })
  async getControlLines() {
    return { items: await this.controlPulls.controlLines(), nextCursor: null };
  }

  @Post('control-pulls')
  @Endpoint({
    summary: 'Hand in the pulls on the control line that begin a bench day.',
    allow: ['tester'],
    status: 201,
    answer: schemas.controlPullResponse,
  })
  async postControlPull(@CurrentActor() actor: Actor, @Body({ schema: schemas.controlPullRequest }) pull: schemas.ControlPullRequest) {
    const { charted, doubted } = await this.addPull.run(actor, pull);
    return { id: charted.pull.id, ...toPoint(charted), doubted };
  }

  @Post('control-pulls/:id/strike')
  @Endpoint({ summary: "Take another's control pull out of its chart.", allow: ['reviewer'], status: 201, answer: schemas.chartsResponse })
  async strikeControlPull(
    @CurrentActor() actor: Actor,
    @Param('id', { schema: schemas.controlPullId }) id: string,
    @Body({ schema: schemas.strikeRequest }) { reason }: z.infer<typeof schemas.strikeRequest>,
  ) {
    await this.strike.run(actor, id, reason);
    return this.getControlCharts({});
  }

  @Get('control-charts')
  @Endpoint({
    summary: 'Control charts by rig, method and control line: pulls, limits, signals, moving averages.',
    allow: ['reviewer', 'editor'],
    answer: schemas.chartsResponse,
  })
  async getControlCharts(@Query({ schema: schemas.chartsQuery }) { instrument, method }: z.infer<typeof schemas.chartsQuery>) {
    const items = chartsOf(await this.pullsOf({ instrument, method })).map(({ pulls: charted, ...chart }) => ({
      ...chart,
      points: charted.map((one) => ({ id: one.pull.id, ...toPoint(one) })),
    }));
    return { items, nextCursor: null };
  }

  @Get('rigs')
  @Endpoint({ summary: 'Where each rig stands in each method, and what to do.', allow: 'signedIn', answer: schemas.rigsResponse })
  async getRigStates(@Query({ schema: schemas.rigsQuery }) { day }: z.infer<typeof schemas.rigsQuery>) {
    const charts = chartsOf(await this.controlPulls.pulls(day === undefined ? {} : { until: day }));
    return { items: rigStates(await this.instruments.rigs(), charts, day), nextCursor: null };
  }

  private async pullsOf({ instrument, method }: { readonly instrument?: string | undefined; readonly method?: string | undefined }) {
    return this.controlPulls.pulls({
      ...(instrument === undefined ? {} : { rigs: await this.instruments.known([instrument]) }),
      ...(method === undefined ? {} : { methods: await this.methods.known([method]) }),
    });
  }
}

import { Controller, Get, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBody, ApiConsumes } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { SubmissionViewsReadModel } from '../views/submission-views.read-model.js';
import { AddTraces } from './add-traces.js';
import { readTraces } from './read-traces.js';
import { tracePlot } from './trace-plot.js';
import { TracesReadModel } from './traces.read-model.js';
import { addTracesQuery, specimenParameter, tracesResponse } from '../../contract/endpoints/traces.js';

@Controller('v1/submissions/:reference/traces')
export class TracesController {
  constructor(
    private readonly views: SubmissionViewsReadModel,
    private readonly addTraces: AddTraces,
    private readonly traces: TracesReadModel,
  ) {}

  @Post()
  @ApiConsumes('text/csv', 'multipart/form-data')
  @ApiBody({
    description: 'Two or three columns of a logger: force over extension or time; units in the header.',
    schema: { type: 'string' },
  })
  @Endpoint({
    summary: 'Adds traces to an own submission that waits for its review: a file of one specimen, or of many with a column of specimens.',
    allow: ['tester'],
    status: 201,
    answer: tracesResponse,
    needsIfMatch: true,
    takes: 'files',
  })
  async postTraces(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @IfMatch() version: number,
    @Query({ schema: addTracesQuery }) { specimen = null }: { specimen?: number | null },
    @Req() request: FastifyRequest,
  ) {
    await this.views.one(actor, reference);
    await this.addTraces.run(actor, reference, version, { ...(await readTraces(request)), specimen });
    return { items: await this.traces.of(reference), nextCursor: null };
  }

  @Get()
  @Endpoint({ summary: 'Traces of a submission with their figures.', allow: ['tester', 'reviewer', 'editor'], answer: tracesResponse })
  async getTraces(@CurrentActor() actor: Actor, @Param('reference') reference: string) {
    await this.views.one(actor, reference);
    return { items: await this.traces.of(reference), nextCursor: null };
  }

  @Get(':specimen/plot.svg')
  @Endpoint({ summary: 'A small drawing of a trace.', allow: ['tester', 'reviewer', 'editor'], answer: null, mediaType: 'image/svg+xml' })
  async getTracePlot(
    @CurrentActor() actor: Actor,
    @Param('reference') reference: string,
    @Param('specimen', { schema: specimenParameter }) specimen: z.infer<typeof specimenParameter>,
    @Res() reply: FastifyReply,
  ) {
    await this.views.one(actor, reference);
    const trace = (await this.traces.of(reference)).find((one) => one.specimen === specimen);
    if (!trace) throw new Problem(platformProblems['request/not-found'], `Specimen ${specimen} of ${reference} has no trace.`);
    const { over, points, figures } = trace;
    const title = `${reference}, specimen ${specimen}`;
    void reply
      .header('Content-Type', 'image/svg+xml; charset=utf-8')
      .header('Content-Security-Policy', "default-src 'none'; style-src 'unsafe-inline'")
      .send(tracePlot({ title, over, points, ...figures }));
  }
}

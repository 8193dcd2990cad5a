import { Body, Controller, Delete, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { AddLine } from './add-line.js';
import { notOnRecord } from '../catalogue-problems.js';
import { Retire } from '../retire.js';
import { CataloguePages } from '../catalogue-pages.read-model.js';
import * as schemas from '../../contract/endpoints/catalogue.js';
import { ChangeLine } from './change-line.js';

const READERS = ['reviewer', 'editor', 'admin'] as const;

@Controller('v1/catalogue/lines')
export class LinesController {
  constructor(
    private readonly add: AddLine,
    private readonly change: ChangeLine,
    private readonly retire: Retire,
    private readonly pages: CataloguePages,
  ) {}

  @Post()
  @Endpoint({ summary: 'Put a line of a maker on record.', allow: ['editor'], status: 201, answer: schemas.lineResponse })
  postCatalogueLine(@CurrentActor() actor: Actor, @Body({ schema: schemas.lineRequest }) input: schemas.LineRequest) {
    return this.add.run(actor, input);
  }

  @Get()
  @Endpoint({ summary: 'Lines on record, by slug.', allow: READERS, answer: schemas.linesResponse })
  getCatalogueLines(@Query({ schema: schemas.pageQuery }) page: schemas.PageQuery) {
    return this.pages.lines(page);
  }

  @Get(':slug')
  @Endpoint({ summary: 'One line.', allow: READERS, answer: schemas.lineResponse })
  async getCatalogueLine(@CurrentActor() actor: Actor, @Param('slug') slug: string) {
    const line = await this.pages.line(actor, slug);
    if (!line) throw notOnRecord('line', slug);
    return line;
  }

  @Post(':slug/retirement')
  @Endpoint({
    summary: 'Retire a line: nothing new is put under it, and it stays readable.',
    allow: ['editor'],
    status: 201,
    answer: schemas.lineResponse,
    needsIfMatch: true,
  })
  async postCatalogueLineRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.retirementRequest }) { reason }: schemas.RetirementRequest,
  ) {
    await this.retire.run(actor, { kind: 'line', slug, expectedVersion, reason });
    return this.getCatalogueLine(actor, slug);
  }

  @Delete(':slug/retirement')
  @Endpoint({ summary: 'Take a retired line into use again.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteCatalogueLineRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
  ): Promise<void> {
    return this.retire.run(actor, { kind: 'line', slug, expectedVersion, reason: null });
  }

  @Patch(':slug')
  @Endpoint({ summary: 'Correct a line.', allow: ['editor'], answer: schemas.lineResponse, needsIfMatch: true })
  patchCatalogueLine(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.lineChange }) change: schemas.LineChange,
  ) {
    return this.change.run(actor, { slug, expectedVersion, change });
  }
}

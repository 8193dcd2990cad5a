import { Body, Controller, Delete, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { AddMaker } from './add-maker.js';
import { notOnRecord } from '../catalogue-problems.js';
import { Retire } from '../retire.js';
import { CataloguePages } from '../catalogue-pages.read-model.js';
import * as schemas from '../../contract/endpoints/catalogue.js';
import { ChangeMaker } from './change-maker.js';

@Controller('v1/catalogue/makers')
export class MakersController {
  constructor(
    private readonly add: AddMaker,
    private readonly change: ChangeMaker,
    private readonly retire: Retire,
    private readonly pages: CataloguePages,
  ) {}

  @Post()
  @Endpoint({ summary: 'Put a maker on record.', allow: ['editor'], status: 201, answer: schemas.makerResponse })
  postCatalogueMaker(@CurrentActor() actor: Actor, @Body({ schema: schemas.makerRequest }) input: schemas.MakerRequest) {
    return this.add.run(actor, input);
  }

  @Get()
  @Endpoint({ summary: 'Makers on record, by slug.', allow: 'signedIn', answer: schemas.makersResponse })
  getCatalogueMakers(@Query({ schema: schemas.pageQuery }) page: schemas.PageQuery) {
    return this.pages.makers(page);
  }

  @Get(':slug')
  @Endpoint({ summary: 'One maker.', allow: 'signedIn', answer: schemas.makerResponse })
  async getCatalogueMaker(@CurrentActor() actor: Actor, @Param('slug') slug: string) {
    const maker = await this.pages.maker(actor, slug);
    if (!maker) throw notOnRecord('maker', slug);
    return maker;
  }

  @Post(':slug/retirement')
  @Endpoint({
    summary: 'Retire a maker: nothing new is put under it, and it stays readable.',
    allow: ['editor'],
    status: 201,
    answer: schemas.makerResponse,
    needsIfMatch: true,
  })
  async postCatalogueMakerRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.retirementRequest }) { reason }: schemas.RetirementRequest,
  ) {
    await this.retire.run(actor, { kind: 'maker', slug, expectedVersion, reason });
    return this.getCatalogueMaker(actor, slug);
  }

  @Delete(':slug/retirement')
  @Endpoint({ summary: 'Take a retired maker into use again.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteCatalogueMakerRetirement(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
  ): Promise<void> {
    return this.retire.run(actor, { kind: 'maker', slug, expectedVersion, reason: null });
  }

  @Patch(':slug')
  @Endpoint({ summary: 'Rename a maker.', allow: ['editor'], answer: schemas.makerResponse, needsIfMatch: true })
  patchCatalogueMaker(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.makerChange }) change: schemas.MakerChange,
  ) {
    return this.change.run(actor, { slug, expectedVersion, ...change });
  }
}

import { Body, Controller, Delete, Get, Header, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiQuery } from '@nestjs/swagger';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import { IfMatch } from '../../platform/http/headers/if-match.js';
import { AddSpool } from './add-spool.js';
import { ChangeSpool } from './change-spool.js';
import { normaliseBlindCode } from '../../contract/blind-code.js';
import { spoolNotOnRecord } from '../catalogue-problems.js';
import { pageQuery, retirementRequest } from '../../contract/endpoints/catalogue.js';
import type { PageQuery, RetirementRequest } from '../../contract/endpoints/catalogue.js';
import { labelSheet } from './label-sheet.js';
import { Retire } from '../retire.js';
import { SpoolsReadModel } from './spools.read-model.js';
import * as schemas from '../../contract/endpoints/spools.js';

@Controller('v1')
export class SpoolsController {
  constructor(
    private readonly add: AddSpool,
    private readonly change: ChangeSpool,
    private readonly retire: Retire,
    private readonly spools: SpoolsReadModel,
  ) {}

  @Post('catalogue/spools')
  @Endpoint({
    summary: 'Put a spool on the shelf; gives it its blind code.',
    allow: ['editor'],
    status: 201,
    answer: schemas.spoolResponse,
  })
  async postSpool(@CurrentActor() actor: Actor, @Body({ schema: schemas.spoolRequest }) input: schemas.SpoolRequest) {
    return this.getSpool(actor, await this.add.run(actor, input));
  }

  @Get('catalogue/spools')
  @Endpoint({
    summary: 'Spools and what their blind codes stand for; who reads them tests them no more blind.',
    allow: ['editor'],
    answer: schemas.spoolsResponse,
  })
  getSpools(@CurrentActor() actor: Actor, @Query({ schema: pageQuery }) page: PageQuery) {
    return this.spools.page(actor, page);
  }

  @Get('catalogue/labels')
  @Header('Content-Type', 'text/html; charset=utf-8')
  @Header('Content-Security-Policy', "default-src 'none'; style-src 'unsafe-inline'")
  @ApiQuery({ name: 'code', description: 'Blind code; given once for each spool', schema: { type: 'array', items: { type: 'string' } } })
  @Endpoint({ summary: 'Labels to print: blind codes alone, three a row on A4.', allow: ['editor'], answer: null, mediaType: 'text/html' })
  async getLabels(@CurrentActor() actor: Actor, @Query({ schema: schemas.labelsQuery }) { code }: schemas.LabelsQuery): Promise<string> {
    const codes = code.map(normaliseBlindCode);
    const known = await this.spools.labels(actor, codes);
    const missing = codes.find((one) => !known.some(({ blindCode }) => blindCode === one));
    if (missing !== undefined) throw spoolNotOnRecord(missing);
    return labelSheet(known);
  }

  @Get('catalogue/spools/:code')
  @Endpoint({ summary: 'One spool and what its blind code stands for.', allow: ['editor'], answer: schemas.spoolResponse })
  async getSpool(@CurrentActor() actor: Actor, @Param('code') code: string) {
    const spool = await this.spools.byCode(actor, normaliseBlindCode(code));
    if (!spool) throw spoolNotOnRecord(code);
    return spool;
  }

  @Patch('catalogue/spools/:code')
  @Endpoint({ summary: 'Correct a spool that was entered wrongly.', allow: ['editor'], answer: schemas.spoolResponse, needsIfMatch: true })
  async patchSpool(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.spoolChange }) change: schemas.SpoolChange,
  ) {
    await this.change.run(actor, { code, expectedVersion, change });
    return this.getSpool(actor, code);
  }

  @Post('catalogue/spools/:code/retirement')
  @Endpoint({
    summary: 'Retire a spool that is used up, lost or spoilt: nobody is asked for it any more, and later bench days are not taken.',
    allow: ['editor'],
    status: 201,
    answer: schemas.spoolResponse,
    needsIfMatch: true,
  })
  async postSpoolRetirement(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: retirementRequest }) { reason }: RetirementRequest,
  ) {
    await this.retire.run(actor, { kind: 'spool', slug: normaliseBlindCode(code), expectedVersion, reason });
    return this.getSpool(actor, code);
  }

  @Delete('catalogue/spools/:code/retirement')
  @Endpoint({ summary: 'Take a retired spool into use again.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteSpoolRetirement(@CurrentActor() actor: Actor, @Param('code') code: string, @IfMatch() expectedVersion: number): Promise<void> {
    return this.retire.run(actor, { kind: 'spool', slug: normaliseBlindCode(code), expectedVersion, reason: null });
  }

  @Get('spools')
  @Endpoint({
    summary:
      'Spools that you were asked for, have begun or have handed in: blind code and length. Of others the code is read on the spool.',
    allow: ['tester'],
    answer: schemas.blindSpoolsResponse,
  })
  getBlindSpools(@CurrentActor() actor: Actor, @Query({ schema: pageQuery }) page: PageQuery) {
    return this.spools.blindPage(actor, page);
  }
}

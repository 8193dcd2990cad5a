import { Body, Controller, Delete, Get, Param, Patch, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { AddEntries } from './add-entries.js';
import { AddScheme } from './add-scheme.js';
import { AmendEdition } from './amend-edition.js';
import { ChangeEdition } from './change-edition.js';
import { EditionsReadModel } from './editions.read-model.js';
import * as schemas from '../contract/endpoints/editions.js';
import * as scheming from '../contract/endpoints/schemes.js';
import { ExcludeEntry } from './exclude-entry.js';
import { OpenEdition } from './open-edition.js';
import { OverruleDivision } from './overrule-division.js';
import { PlanEdition } from './plan-edition.js';

@Controller('v1')
export class EditionsController {
  constructor(
    private readonly schemes: AddScheme,
    private readonly plan: PlanEdition,
    private readonly changing: ChangeEdition,
    private readonly amending: AmendEdition,
    private readonly entering: AddEntries,
    private readonly opening: OpenEdition,
    private readonly excluding: ExcludeEntry,
    private readonly overruling: OverruleDivision,
    private readonly editions: EditionsReadModel,
  ) {}

  @Post('schemes')
  @Endpoint({ summary: 'Add a scheme; it never changes.', allow: ['editor'], status: 201, answer: scheming.schemeResponse })
  async postScheme(@CurrentActor() actor: Actor, @Body({ schema: scheming.schemeRequest }) input: scheming.SchemeRequest) {
    await this.schemes.run(actor, input);
    return input;
  }

  @Get('schemes')
  @Endpoint({ summary: 'All schemes.', allow: ['editor', 'reviewer'], answer: scheming.schemesResponse })
  async getSchemes() {
    return { items: await this.editions.schemes(), nextCursor: null };
  }

  @Post('editions')
  @Endpoint({ summary: 'Plan an edition.', allow: ['editor'], status: 201, answer: schemas.editionResponse })
  async postEdition(@CurrentActor() actor: Actor, @Body({ schema: schemas.editionRequest }) input: schemas.EditionRequest) {
    await this.plan.run(actor, input);
    return this.one(input.slug);
  }

  @Get('bench/editions')
  @Endpoint({ summary: 'Editions in work, with their state.', allow: 'signedIn', answer: schemas.workingEditionsResponse })
  async getWorkingEditions() {
    return { items: await this.editions.editions(), nextCursor: null };
  }

  @Get('bench/editions/:edition')
  @Endpoint({ summary: 'An edition in work.', allow: 'signedIn', answer: schemas.editionResponse })
  getWorkingEdition(@Param('edition') slug: string) {
    return this.one(slug);
  }

  @Patch('editions/:edition')
  @Endpoint({
    summary: 'Change a planned edition: name, scheme or divisions, days, methods, the edition before.',
    allow: ['editor'],
    answer: schemas.editionResponse,
    needsIfMatch: true,
  })
  async patchEdition(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @IfMatch() version: number,
    @Body({ schema: schemas.editionChange }) change: schemas.EditionChange,
  ) {
    await this.changing.run(actor, slug, version, change);
    return this.one(slug);
  }

  @Delete('editions/:edition')
  @Endpoint({ summary: 'Take a planned edition away.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteEdition(@CurrentActor() actor: Actor, @Param('edition') slug: string, @IfMatch() version: number): Promise<void> {
    return this.changing.delete(actor, slug, version);
  }

  @Delete('editions/:edition/entries/:variant')
  @Endpoint({ summary: 'Take an entry out of a planned edition.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteEntry(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @Param('variant') variant: string,
    @IfMatch() version: number,
  ): Promise<void> {
    return this.changing.removeEntry(actor, slug, version, variant);
  }

  @Post('editions/:edition/amendments')
  @Endpoint({
    summary: 'Let an open edition take further entries, forgotten methods or a later closing day, with the reason.',
    allow: ['editor'],
    status: 201,
    answer: schemas.editionResponse,
    needsIfMatch: true,
  })
  async postAmendment(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @IfMatch() version: number,
    @Body({ schema: schemas.amendmentRequest }) input: schemas.AmendmentRequest,
  ) {
    await this.amending.run(actor, slug, version, input);
    return this.one(slug);
  }

  @Post('editions/:edition/entries')
  @Endpoint({ summary: 'Enter variants in a planned edition.', allow: ['editor'], status: 201, answer: schemas.editionResponse })
  async postEntries(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @Body({ schema: schemas.entriesRequest }) input: schemas.EntriesRequest,
  ) {
    await this.entering.run(actor, slug, input);
    return this.one(slug);
  }

  @Post('editions/:edition/opening')
  @Endpoint({
    summary: 'Open: pins schemes, methods and checks.',
    allow: ['editor'],
    status: 201,
    answer: schemas.editionResponse,
    needsIfMatch: true,
  })
  async postOpening(@CurrentActor() actor: Actor, @Param('edition') slug: string, @IfMatch() version: number) {
    await this.opening.run(actor, slug, version);
    return this.one(slug);
  }

  @Post('editions/:edition/exclusions')
  @Endpoint({ summary: 'Leave an entry out, with the reason.', allow: ['editor'], status: 201, answer: schemas.editionResponse })
  async postExclusion(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @Body({ schema: schemas.exclusionRequest }) input: schemas.ExclusionRequest,
  ) {
    await this.excluding.run(actor, slug, input);
    return this.one(slug);
  }

  @Delete('editions/:edition/exclusions/:variant')
  @Endpoint({ summary: 'Take an excluded entry in again.', allow: ['editor'], status: 204, answer: null })
  async deleteExclusion(@CurrentActor() actor: Actor, @Param('edition') slug: string, @Param('variant') variant: string): Promise<void> {
    await this.excluding.undo(actor, slug, variant);
  }

  @Post('editions/:edition/overrulings')
  @Endpoint({
    summary: 'Put an entry into a division whatever the rule says, with the reason; a published edition shows it with its next revision.',
    allow: ['editor'],
    status: 201,
    answer: schemas.editionResponse,
  })
  async postOverruling(
    @CurrentActor() actor: Actor,
    @Param('edition') slug: string,
    @Body({ schema: schemas.overrulingRequest }) input: schemas.OverrulingRequest,
  ) {
    await this.overruling.run(actor, slug, input);
    return this.one(slug);
  }

  @Delete('editions/:edition/overrulings/:variant')
  @Endpoint({ summary: 'Let the rule decide on the division of an entry again.', allow: ['editor'], status: 204, answer: null })
  async deleteOverruling(@CurrentActor() actor: Actor, @Param('edition') slug: string, @Param('variant') variant: string): Promise<void> {
    await this.overruling.undo(actor, slug, variant);
  }

  @Get('commitments')
  @Endpoint({
    summary: 'Digests of the keys of blind codes, published at each opening; they name no edition.',
    allow: 'anyone',
    answer: schemas.commitmentsResponse,
  })
  async getCommitments() {
    return { items: await this.editions.commitments(), nextCursor: null };
  }

  private async one(slug: string) {
    const [edition] = await this.editions.editions(slug);
    if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    return edition;
  }
}

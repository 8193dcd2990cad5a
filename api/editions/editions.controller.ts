import { Body, Controller, Delete, Get, Param, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { IfMatch } from '../platform/http/if-match.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { AddScheme } from './add-scheme.js';
import { AddEntries } from './add-entries.js';
import { CloseEdition } from './close-edition.js';
import { computeEdition } from './compute-edition.js';
import { EditionsReadModel } from './editions.read-model.js';
import * as schemas from './editions.schemas.js';
import { ExcludeEntry } from './exclude-entry.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';
import { shortfallsOf, wordsOf } from './eligibility.js';
import { OpenEdition } from './open-edition.js';
import { PlanEdition } from './plan-edition.js';
import { keyOf } from './quantity.js';
import { PreviewEdition } from './preview-edition.js';

@Controller('v1')
export class EditionsController {
  constructor(
    private readonly addScheme: AddScheme,
    private readonly plan: PlanEdition,
    private readonly entering: AddEntries,
    private readonly opening: OpenEdition,
    private readonly closing: CloseEdition,
    private readonly excluding: ExcludeEntry,
    private readonly previewing: PreviewEdition,
    private readonly evidence: EditionEvidenceReadModel,
    private readonly editions: EditionsReadModel,
    private readonly submissions: SubmissionsReadModel,
  ) {}

  @Post('schemes')
  @Endpoint({ summary: 'Add a scheme; it never changes.', allow: ['editor'], status: 201, answer: schemas.schemeResponse })
  async postScheme(@CurrentActor() actor: Actor, @Body({ schema: schemas.schemeRequest }) input: schemas.SchemeRequest) {
    await this.addScheme.run(actor, input);
    return input;
  }

  @Get('schemes')
  @Endpoint({ summary: 'All schemes.', allow: ['editor', 'reviewer'], answer: schemas.schemesResponse })
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

  @Post('editions/:edition/entries')
  @Endpoint({ summary: 'Enter variants.', allow: ['editor'], status: 201, answer: schemas.editionResponse })
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
    summary: 'Open: pins scheme, methods and checks.',
    allow: ['editor'],
    status: 201,
    answer: schemas.editionResponse,
    needsIfMatch: true,
  })
  async postOpening(@CurrentActor() actor: Actor, @Param('edition') slug: string, @IfMatch() version: number) {
    await this.opening.run(actor, slug, version);
    return this.one(slug);
  }

  @Post('editions/:edition/closure')
  @Endpoint({ summary: 'Close: no more submissions.', allow: ['editor'], status: 201, answer: schemas.editionResponse, needsIfMatch: true })
  async postClosure(@CurrentActor() actor: Actor, @Param('edition') slug: string, @IfMatch() version: number) {
    await this.closing.run(actor, slug, version);
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

  @Get('editions/:edition/board')
  @Endpoint({ summary: 'What is missing per entry, and why.', allow: ['editor'], answer: schemas.boardResponse })
  async getBoard(@Param('edition') slug: string) {
    const { edition, results } = computeEdition(await this.evidence.of(slug));
    const { id, state } = await this.editions.standOf(slug);
    return {
      edition: slug,
      state,
      submissions: await this.submissions.countByState(id),
      inDoubt: await this.submissions.countInDoubt(id),
      entries: edition.entries.map(({ variant, exclusion }) => {
        const { categories } = edition.scheme.rules;
        const lacking = categories.flatMap((category) => shortfallsOf(category, variant, results));
        return {
          variant,
          missing: [...new Set(lacking.map(({ category }) => category))],
          needs: lacking.map(wordsOf),
          evidence: categories.map((category) => {
            const { specimens = 0, submissions = 0, testers = 0, rigs = 0 } = results.get(variant)?.get(keyOf(category)) ?? {};
            return { category: category.code, specimens, submissions, testers, rigs };
          }),
          exclusion,
        };
      }),
    };
  }

  @Post('editions/:edition/previews')
  @Endpoint({
    summary: 'Standings as they would be published now, and what changed since the last look.',
    allow: ['editor'],
    status: 201,
    answer: schemas.previewResponse,
  })
  async postPreview(@CurrentActor() actor: Actor, @Param('edition') slug: string) {
    const { standings, since } = await this.previewing.run(actor, slug);
    return {
      edition: slug,
      overall: standings.overall.map(({ id, place, score }) => ({ variant: id, place, score })),
      categories: Object.fromEntries(
        Object.entries(standings.categories).map(([code, rows]) => [
          code,
          rows.map(({ id, place, value }) => ({ variant: id, place, value })),
        ]),
      ),
      incomplete: standings.incomplete.map(({ id, missing }) => ({ variant: id, missing: [...missing] })),
      excluded: [...standings.excluded],
      since,
    };
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

import { Body, Controller, Param, Post } from '@nestjs/common';
import { exclusionRequest, type ExclusionRequest } from '../../contract/endpoints/editions.js';
import { exclusionPreviewResponse, previewResponse } from '../../contract/endpoints/previews.js';
import { CurrentActor } from '../../platform/http/access.js';
import type { Actor } from '../../platform/http/access.js';
import { Endpoint } from '../../platform/http/endpoint.js';
import type { Figure } from '../../contract/documents/figure.js';
import { PreviewEdition, told } from './preview-edition.js';
import { PreviewExclusion } from './preview-exclusion.js';

@Controller('v1')
export class PreviewsController {
  constructor(
    private readonly previewing: PreviewEdition,
    private readonly supposing: PreviewExclusion,
  ) {}

  @Post('editions/:edition/previews')
  @Endpoint({
    summary: 'Standings as they would be published now, and what changed since the last look and since the release.',
    allow: ['editor'],
    status: 201,
    answer: previewResponse,
  })
  async postPreview(@CurrentActor() actor: Actor, @Param('edition') slug: string) {
    const { standings, since, published } = await this.previewing.run(actor, slug);
    return { edition: slug, ...shown(standings), since, published };
  }

  @Post('editions/:edition/exclusions/preview')
  @Endpoint({
    summary: 'What would change in the standings if an entry were left out; stores nothing.',
    allow: ['editor'],
    status: 200,
    answer: exclusionPreviewResponse,
  })
  async postExclusionPreview(@Param('edition') slug: string, @Body({ schema: exclusionRequest }) input: ExclusionRequest) {
    return { edition: slug, variant: input.variant, changes: told(await this.supposing.run(slug, input)) };
  }
}

type Compared = Awaited<ReturnType<PreviewEdition['run']>>['standings'];

const NO_TABLES = { overall: [], categories: {}, incomplete: [], excluded: [] };

const shown = (compared: Compared) => {
  const divisions = compared.flatMap((one) => (one.context.division ? [{ division: one.context.division.slug, ...tablesOf(one) }] : []));
  const [whole] = compared;
  return divisions.length > 0 || !whole ? { ...NO_TABLES, divisions } : tablesOf(whole);
};

function tablesOf({ edition, categories, context }: Compared[number]) {
  const { standings } = context.computed;
  const groups = new Map(edition.overall.map(({ variant, group }) => [variant.slug, group]));
  const documents = new Map(categories.map(({ category, rows }) => [category.code, new Map(rows.map((row) => [row.variant.slug, row]))]));
  return {
    overall: standings.overall.map(({ id, place, score }) => ({ variant: id, place, score, group: groups.get(id) ?? null })),
    categories: Object.fromEntries(
      Object.entries(standings.categories).map(([code, rows]) => [
        code,
        rows.map(({ id, place, value }) => {
          const { group = null, figure } = documents.get(code)?.get(id) ?? {};
          return { variant: id, place, value, group, figure: figure ? shownOf(figure) : null };
        }),
      ]),
    ),
    incomplete: standings.incomplete.map(({ id, missing }) => ({ variant: id, missing: [...missing] })),
    excluded: [...standings.excluded],
  };
}

const shownOf = ({ name, unit, value, low, high }: Figure) => ({ name, unit, value, low, high });

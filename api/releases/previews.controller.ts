import { Controller, Param, Post } from '@nestjs/common';
import { previewResponse } from '../contract/endpoints/previews.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import type { ReleaseContext } from '../reckoning/documents/release-context.js';
import { PreviewEdition } from './preview-edition.js';

@Controller('v1')
export class PreviewsController {
  constructor(private readonly previewing: PreviewEdition) {}

  @Post('editions/:edition/previews')
  @Endpoint({
    summary: 'Standings as they would be published now, and what changed since the last look and since the release.',
    allow: ['editor'],
    status: 201,
    answer: previewResponse,
  })
  async postPreview(@CurrentActor() actor: Actor, @Param('edition') slug: string) {
    const { compared, since, published } = await this.previewing.run(actor, slug);
    return { edition: slug, ...shown(compared), since, published };
  }
}

const NO_TABLES = { overall: [], categories: {}, incomplete: [], excluded: [] };

const shown = (compared: readonly ReleaseContext[]) => {
  const divisions = compared.flatMap(({ division, computed }) =>
    division ? [{ division: division.slug, ...tablesOf(computed.standings) }] : [],
  );
  const [whole] = compared;
  return divisions.length > 0 || !whole ? { ...NO_TABLES, divisions } : tablesOf(whole.computed.standings);
};

const tablesOf = (standings: ReleaseContext['computed']['standings']) => ({
  overall: standings.overall.map(({ id, place, score }) => ({ variant: id, place, score })),
  categories: Object.fromEntries(
    Object.entries(standings.categories).map(([code, rows]) => [code, rows.map(({ id, place, value }) => ({ variant: id, place, value }))]),
  ),
  incomplete: standings.incomplete.map(({ id, missing }) => ({ variant: id, missing: [...missing] })),
  excluded: [...standings.excluded],
});

import { Injectable } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { computeEdition } from '../reckoning/standings/compute-edition.js';
import { EditionEvidenceReadModel } from './edition-evidence.read-model.js';
import { changesSince, previewCells } from './preview.js';
import { PreviewsStore } from './previews.store.js';

/** Shows the standings as they would be published now, with what has changed since the last look, and keeps this look. */
@Injectable()
export class PreviewEdition {
  constructor(
    private readonly evidence: EditionEvidenceReadModel,
    private readonly store: PreviewsStore,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, slug: string) {
    const { standings } = computeEdition(await this.evidence.of(slug));
    const cells = previewCells(standings);
    return this.database.transaction(async (tx) => {
      const last = await this.store.keep(tx, slug, { byId: actor.accountId, at: this.clock.now(), cells });
      return { standings, since: last && { at: last.at.toISOString(), changes: changesSince(last.cells, cells) } };
    });
  }
}

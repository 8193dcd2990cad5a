import { Injectable } from '@nestjs/common';
import { EditionObstacles } from '../../editions/obstacles.read-model.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { KeyReadings } from '../../audit/key-readings.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { groupOf } from '../../contract/cell-groups.js';
import { changesBetween } from '../../reckoning/cells.js';
import type { CellChange } from '../../reckoning/cells.js';
import { GatherRelease } from '../publication/gather-release.js';
import { EditionPreviewsStore } from './edition-previews.store.js';
import { shownStandings } from './shown-standings.js';
import { ReleasesReadModel } from '../releases.read-model.js';

/** Shows the standings as they would be published now, with what has changed since the last look and since the release, and keeps this look. */
@Injectable()
export class PreviewEdition {
  constructor(
    private readonly gather: GatherRelease,
    private readonly obstacles: EditionObstacles,
    private readonly releases: ReleasesReadModel,
    private readonly editions: EditionsReadModel,
    private readonly store: EditionPreviewsStore,
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly keyReadings: KeyReadings,
  ) {}

  async run(actor: Actor, slug: string) {
    await this.obstacles.requireComputable(slug);
    const published = await this.releases.find(slug);
    const at = this.clock.now();
    const inputs = await this.gather.run(slug, (published?.revision ?? 0) + 1, at, null);
    // A row that was put right ties the submissions that rested on it, and so their spools, to what they are.
    const rested = (inputs.evidence.superseded ?? []).flatMap(({ submissions }) => submissions);
    await this.keyReadings.note(actor, 'key', { references: rested });
    const { tables, shown } = shownStandings(inputs);
    const toPublished = published && {
      revision: published.revision,
      changes: told(changesBetween(await this.releases.cellsOf(published), shown)),
    };
    const { id } = await this.editions.standOf(slug);
    const last = await this.database.transaction((tx) => this.store.keep(tx, id, { byId: actor.accountId, at, shown }));
    const since = last && { at: last.at.toISOString(), changes: told(changesBetween(last.shown, shown)) };
    return { standings: tables, since, published: toPublished };
  }
}

/** Each with what it is about. */
export const told = (changes: readonly CellChange[]) => changes.map((change) => ({ about: groupOf(change.where), ...change }));

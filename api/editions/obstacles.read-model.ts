import { Injectable } from '@nestjs/common';
import type { Obstacle } from '../contract/obstacle.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import { divisionObstacles, WITH_DIVIDED } from './divisions.js';
import { bySlug } from './edition.js';
import { EditionEntries } from './edition-entries.read-model.js';
import { openingObstacles, toOpening } from './opening-obstacles.js';

/** What stands in the way of the next step of an edition that is known to be there. */
@Injectable()
export class EditionObstacles {
  constructor(
    private readonly database: Database,
    private readonly methods: MethodsReadModel,
    private readonly entries: EditionEntries,
  ) {}

  /** Everything that stands in the way of opening it. */
  async toOpening(slug: string): Promise<Obstacle[]> {
    const edition = await this.database.client.edition.findUniqueOrThrow({
      where: { slug },
      include: { ...WITH_DIVIDED, methods: true },
    });
    const versions = await this.methods.versionRows(edition.methods.map(({ methodVersionId }) => methodVersionId));
    const entries = await this.entries.withVariants(edition.entries);
    return openingObstacles(toOpening({ ...edition, entries }, bySlug([...versions.values()])));
  }

  /** Entries that are in no division, or could be in several. */
  async ofDivisions(slug: string): Promise<Obstacle[]> {
    const { divisions, entries } = await this.database.client.edition.findUniqueOrThrow({ where: { slug }, include: WITH_DIVIDED });
    return divisionObstacles(divisions, await this.entries.withVariants(entries));
  }
}

import { Injectable } from '@nestjs/common';
import { obstacleFaults } from '../contract/obstacle.js';
import type { Obstacle } from '../contract/obstacle.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { divisionObstacles, WITH_DIVIDED } from './divisions.js';
import { bySlug } from './edition.js';
import { EditionEntries } from './edition-entries.read-model.js';
import { editionProblems } from './editions.errors.js';
import { NEVER_COMPUTED, openingObstacles, toOpening } from './opening-obstacles.js';

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

  /**
   * Nothing is computed of an edition that ranks what it does not measure: none is opened so, but one can be put on record past the rules.
   * @throws Problem editions/cannot-count that names it
   */
  async requireComputable(slug: string): Promise<void> {
    if ((await this.database.client.edition.count({ where: { slug } })) === 0)
      throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    const never = (await this.toOpening(slug)).filter(({ code }) => NEVER_COMPUTED.includes(code));
    if (never.length === 0) return;
    const words = `Nothing can be computed of edition ${slug}: what it ranks and what it measures do not fit.`;
    throw new Problem(editionProblems['editions/cannot-count'], words, obstacleFaults(never));
  }

  /** Entries that are in no division, or could be in several. */
  async ofDivisions(slug: string): Promise<Obstacle[]> {
    const { divisions, entries } = await this.database.client.edition.findUniqueOrThrow({ where: { slug }, include: WITH_DIVIDED });
    return divisionObstacles(divisions, await this.entries.withVariants(entries));
  }
}

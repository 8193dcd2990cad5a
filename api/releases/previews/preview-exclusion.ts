import { Injectable } from '@nestjs/common';
import type { ExclusionRequest } from '../../contract/endpoints/editions.js';
import { Clock } from '../../platform/clock/clock.js';
import { platformProblems } from '../../platform/errors/platform.errors.js';
import { Problem } from '../../platform/errors/problem.js';
import { changesBetween } from '../../reckoning/cells.js';
import type { CellChange } from '../../reckoning/cells.js';
import { GatherRelease } from '../publication/gather-release.js';
import { shownStandings } from './shown-standings.js';
import { ReleasesReadModel } from '../releases.read-model.js';

/** What readers would see otherwise if an entry were left out, against the standings as they are. Reads only. */
@Injectable()
export class PreviewExclusion {
  constructor(
    private readonly gather: GatherRelease,
    private readonly releases: ReleasesReadModel,
    private readonly clock: Clock,
  ) {}

  async run(slug: string, { variant, ...exclusion }: ExclusionRequest): Promise<CellChange[]> {
    const published = await this.releases.find(slug);
    const inputs = await this.gather.run(slug, (published?.revision ?? 0) + 1, this.clock.now(), null);
    const { edition } = inputs.evidence;
    if (!edition.entries.some((entry) => entry.variant === variant))
      throw new Problem(platformProblems['request/not-found'], `Edition ${slug} has no entry ${variant}.`);
    const entries = edition.entries.map((entry) => (entry.variant === variant ? { variant, exclusion } : entry));
    const without = { ...inputs, evidence: { ...inputs.evidence, edition: { ...edition, entries } } };
    return changesBetween(shownStandings(inputs).shown, shownStandings(without).shown);
  }
}

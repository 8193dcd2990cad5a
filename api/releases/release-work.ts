import { Injectable } from '@nestjs/common';
import { Jobs } from '../platform/jobs/jobs.js';
import { BuildSite } from './build-site.js';
import { PublishRelease } from './publish-release.js';
import { BUILD_SITE, PUBLISH_RELEASE } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { ReleasesReadModel } from './releases.read-model.js';

/** What the worker does for releases: carries out orders, and finishes what an earlier worker left. */
@Injectable()
export class ReleaseWork {
  constructor(
    private readonly jobs: Jobs,
    private readonly releases: ReleasesReadModel,
    private readonly publishing: PublishRelease,
    private readonly site: BuildSite,
  ) {}

  /** @param withSite whether this process builds the site as well */
  async start(withSite: boolean): Promise<void> {
    await this.finishWhatWasLeft();
    await this.jobs.carryOut(PUBLISH_RELEASE, (order) => this.publishing.run(order as PublishReleaseOrder));
    if (!withSite) return;
    await this.site.run();
    await this.jobs.carryOut(BUILD_SITE, () => this.site.run());
  }

  private async finishWhatWasLeft(): Promise<void> {
    for (const order of await this.releases.building()) await this.publishing.run(order);
  }
}

import { Injectable, Logger } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import { Clock } from '../platform/clock/clock.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { BuildSite } from './build-site.js';
import { PublishRelease } from './publish-release.js';
import { BUILD_SITE, PUBLISH_RELEASE } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { ReleasesReadModel } from './releases.read-model.js';

/** How often the worker looks whether the time of a release has come. */
const LOOK_EVERY_MS = 5000;

/** What the worker does for releases: carries out orders, and finishes what an earlier worker left. */
@Injectable()
export class ReleaseWork implements OnApplicationShutdown {
  private readonly log = new Logger(ReleaseWork.name);
  private watch: NodeJS.Timeout | undefined;

  constructor(
    private readonly jobs: Jobs,
    private readonly releases: ReleasesReadModel,
    private readonly publishing: PublishRelease,
    private readonly site: BuildSite,
    private readonly clock: Clock,
  ) {}

  /** @param withSite whether this process builds the site as well */
  async start(withSite: boolean): Promise<void> {
    await this.publishDue();
    this.watch = setInterval(() => void this.publishDue().catch(() => undefined), LOOK_EVERY_MS);
    await this.jobs.carryOut(PUBLISH_RELEASE, (order) => this.publishing.run(order as PublishReleaseOrder));
    if (!withSite) return;
    await this.site.run();
    await this.jobs.carryOut(BUILD_SITE, () => this.site.run());
  }

  /** Publishes what an earlier worker left, and what has waited for its time. */
  async publishDue(): Promise<void> {
    for (const order of await this.releases.due(this.clock.now())) {
      // One that cannot be built must not hold up the others.
      await this.publishing
        .run(order)
        .catch((error: unknown) => this.log.error(`Release ${order.edition}/${order.revision}: ${String(error)}`));
    }
  }

  onApplicationShutdown(): void {
    clearInterval(this.watch);
  }
}

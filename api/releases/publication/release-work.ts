import { Injectable, Logger } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { BuildSite } from '../site/build-site.js';
import { CompressRelease } from './compress-release.js';
import { compressedFolder } from './compressed-files.js';
import { PublishRelease } from './publish-release.js';
import { BUILD_SITE, COMPRESS_RELEASE, COMPRESSED_AFTER_S, ordersFor, PREPARE_RELEASE, PUBLISH_RELEASE } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import { SigningKey } from '../signing/signing-key.js';
import { SweepReleaseFolders } from './sweep-release-folders.js';
import { verifyScript } from '../verify/verify-script.js';

/** What the worker does for releases: carries out orders, and finishes what an earlier worker left. */
@Injectable()
export class ReleaseWork {
  private readonly log = new Logger(ReleaseWork.name);

  constructor(
    private readonly jobs: Jobs,
    private readonly files: FileStore,
    private readonly releases: ReleasesReadModel,
    private readonly publishing: PublishRelease,
    private readonly compressing: CompressRelease,
    private readonly site: BuildSite,
    private readonly key: SigningKey,
    private readonly sweeping: SweepReleaseFolders,
    private readonly clock: Clock,
  ) {}

  /** @param withSite whether this process builds the site as well */
  async start(withSite: boolean): Promise<void> {
    // The script is made from the files that this process was loaded from, before anybody lays a newer version over them.
    await verifyScript();
    const fault = await this.key.fault();
    if (fault !== null) this.log.error(fault);
    await this.renewOrders();
    await this.publishDue();
    await this.orderCompression();
    await this.sweeping.run();
    await this.jobs.carryOut(PUBLISH_RELEASE, async (order) => {
      await this.publishing.run(order as PublishReleaseOrder);
      await this.sweeping.run();
    });
    await this.jobs.carryOut(PREPARE_RELEASE, async (order) => {
      const ahead = await this.publishing.prepare(order as PublishReleaseOrder);
      if (withSite && ahead) await this.site.ahead(order as PublishReleaseOrder, ahead);
    });
    await this.jobs.carryOut(COMPRESS_RELEASE, (order) => this.compressing.run(order as PublishReleaseOrder));
    if (!withSite) return;
    await this.jobs.order(null, BUILD_SITE, {});
    await this.jobs.carryOut(BUILD_SITE, () => this.site.run());
  }

  /** Publishes at once what a worker that is gone was at: its order is taken up again only when its silence is noticed. */
  async publishDue(): Promise<void> {
    for (const order of await this.releases.due(this.clock.now())) {
      // One that cannot be built must not hold up the others.
      await this.publishing
        .run(order)
        .catch((error: unknown) => this.log.error(`Release ${order.edition}/${order.revision}: ${String(error)}`));
    }
  }

  /** Releases of before there was such an order have no compressed forms. */
  private async orderCompression(): Promise<void> {
    for (const { edition, revision, digest } of await this.releases.list())
      if (!(await this.files.isFolder(compressedFolder(releaseFolder(edition, revision, digest)))))
        await this.jobs.order(null, COMPRESS_RELEASE, { edition, revision } satisfies PublishReleaseOrder, {
          key: digest,
          afterS: COMPRESSED_AFTER_S,
        });
  }

  /** A release that waits has its orders, also when its last ones were given up; one that has them keeps them. */
  private async renewOrders(): Promise<void> {
    for (const { id, publishAt, ...order } of await this.releases.waiting())
      for (const { queue, ...wishes } of ordersFor(id, publishAt, this.clock.now())) await this.jobs.order(null, queue, order, wishes);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import type { ReleaseSummary } from '../../contract/documents/release-documents.js';
import { Clock } from '../../platform/clock/clock.js';
import { withDatabaseLock } from '../../platform/database/database-lock.js';
import { Database } from '../../platform/database/database.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { Jobs } from '../../platform/jobs/jobs.js';
import { BuildRelease } from './build-release.js';
import type { Built } from './build-release.js';
import { PublishedReleases } from '../published-releases.read-model.js';
import { BUILD_SITE, COMPRESS_RELEASE, COMPRESSED_AFTER_S } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import { ReleasesStore } from '../releases.store.js';
import type { BuiltRelease } from '../releases.store.js';
import { SigningKey } from '../signing/signing-key.js';

/** How long the time that a release bears stays fixed while its building is tried again. */
const FIXED_FOR = { ms: 15 * 60_000 };
/** An order may be taken up so long before its time: the rest is waited for here, with all files in their place. */
const LONGEST_WAIT_MS = 60_000;
/** So long before its time it is looked at for the last time whether anything changed. */
const LAST_LOOK_MS = 3000;

interface Waiting {
  readonly id: string;
  readonly editionId: string;
  readonly edition: string;
  readonly revision: number;
  readonly publishAt: Date | null;
  readonly erratum: unknown;
}

/** Publishes a release that was asked for: its files are built before, and told of in one transaction. Doing it twice is doing it once. */
@Injectable()
export class PublishRelease {
  constructor(
    private readonly building: BuildRelease,
    private readonly releases: ReleasesReadModel,
    private readonly store: ReleasesStore,
    private readonly key: SigningKey,
    private readonly files: FileStore,
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
    private readonly published: PublishedReleases,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** @throws Error when its time has not come and is not near */
  async run(order: PublishReleaseOrder): Promise<void> {
    await this.alone(order, async (release) => {
      const { publishAt } = release;
      if (this.earlyMs(publishAt) > LONGEST_WAIT_MS)
        throw new Error(`Its time, ${publishAt?.toISOString() ?? ''}, has not come by the clock of this machine.`);
      const publishedAt = await this.fixTime(release);
      if (publishedAt === null) return;
      if (this.earlyMs(publishAt) > LAST_LOOK_MS) {
        await this.building.run(release, publishedAt);
        await this.until(publishAt, LAST_LOOK_MS);
      }
      const built = await this.building.run(release, publishedAt);
      await this.until(publishAt, 0);
      await this.publish(release, await this.sealed(release, built, publishedAt));
    });
  }

  /**
   * Builds the files of a release that waits for its time; what has changed by then is built anew.
   * @returns all that will be published then; null when it does not wait any more
   */
  async prepare(order: PublishReleaseOrder): Promise<ReleaseSummary[] | null> {
    let ahead: ReleaseSummary[] | null = null;
    await this.alone(order, async (release) => {
      if (this.earlyMs(release.publishAt) <= 0) return;
      const publishedAt = await this.fixTime(release);
      if (publishedAt === null) return;
      const { manifest, erratum } = await this.building.run(release, publishedAt);
      const built = { digest: sha256(manifest), publishedAt: publishedAt.toISOString(), erratum };
      ahead = await this.releases.listOnce(release.edition, release.revision, built);
    });
    return ahead;
  }

  /** However often an order is taken up, one at a time builds: whoever comes later finds it published. */
  private async alone({ edition, revision }: PublishReleaseOrder, work: (release: Waiting) => Promise<void>): Promise<void> {
    await withDatabaseLock(this.config.DATABASE_URL, `publication of ${edition}/${revision}`, async () => {
      const release = await this.releases.state(edition, revision);
      if (release?.state === 'building') await work({ ...release, edition, revision });
    });
  }

  private async until(publishAt: Date | null, beforeMs: number): Promise<void> {
    const early = this.earlyMs(publishAt) - beforeMs;
    if (early > 0) await pause(early);
  }

  private earlyMs(publishAt: Date | null): number {
    return publishAt === null ? 0 : publishAt.getTime() - this.clock.now().getTime();
  }

  /** A release bears the time that it was asked for, or when its building began. */
  private async fixTime({ id, publishAt }: Waiting): Promise<Date | null> {
    const time = publishAt !== null && this.earlyMs(publishAt) > 0 ? publishAt : this.clock.now();
    return this.database.transaction((tx) => this.store.fixTime(tx, id, time, FIXED_FOR));
  }

  /** With the signature of the key that the house has when it publishes. */
  private async sealed(
    { edition, revision }: Waiting,
    { manifest, previousDigest, erratum }: Built,
    publishedAt: Date,
  ): Promise<BuiltRelease> {
    const digest = sha256(manifest);
    const signature = await this.key.sign(manifest);
    await this.files.write(`${releaseFolder(edition, revision, digest)}/signature.json`, signature);
    return { manifest, signature, digest, previousDigest, publishedAt, ...(erratum ? { erratum } : {}) };
  }

  private async publish(release: Waiting, built: BuiltRelease): Promise<void> {
    const { edition, revision } = release;
    for (const queue of [BUILD_SITE, COMPRESS_RELEASE]) await this.jobs.prepare(queue);
    await this.database.transaction(async (tx) => {
      const isPublished = await this.store.publish(tx, release, built);
      if (!isPublished) return;
      await this.jobs.order(tx, BUILD_SITE, { edition, revision });
      await this.jobs.order(tx, COMPRESS_RELEASE, { edition, revision }, { key: built.digest, afterS: COMPRESSED_AFTER_S });
      await this.audit.record(tx, {
        actorId: null,
        action: 'release.published',
        objectType: 'release',
        objectId: `${edition}/${revision}`,
        after: { digest: built.digest },
      });
    });
    await this.published.catchUp();
  }
}

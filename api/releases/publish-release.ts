import { Inject, Injectable } from '@nestjs/common';
import { setTimeout as pause } from 'node:timers/promises';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Clock } from '../platform/clock/clock.js';
import { withDatabaseLock } from '../platform/database/database-lock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { FileStore } from '../platform/file-store/file-store.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { Jobs } from '../platform/jobs/jobs.js';
import {
  categoryDocumentSchema,
  editionDocumentSchema,
  editionFileSchema,
  variantDocumentSchema,
} from '../contract/documents/release-documents.js';
import type { EditionDocument } from '../contract/documents/release-documents.js';
import { tablesIn } from '../reckoning/documents/bundle.js';
import type { Bundle } from '../reckoning/documents/bundle.js';
import { canonicalJson } from '../reckoning/canonical-json.js';
import { computeRelease } from '../reckoning/compute-release.js';
import { GatherRelease } from './gather-release.js';
import { pressFiles } from './pressed-files.js';
import { PublishedReleases } from './published-releases.read-model.js';
import { manifestOf } from '../reckoning/release-files.js';
import { sealedFiles } from '../reckoning/sealed-files.js';
import type { ReleaseFile, SealedFile } from '../reckoning/release-files.js';
import { BUILD_SITE } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { releaseProblems } from './releases.errors.js';
import { releaseFolder, ReleasesReadModel } from './releases.read-model.js';
import { ReleasesStore } from './releases.store.js';
import type { BuiltRelease } from './releases.store.js';
import type { ReleaseRequest } from '../contract/endpoints/releases.js';
import { SigningKey } from './signing-key.js';
import { verifyScript } from './verify/verify-script.js';

/** How long the time that a release bears stays fixed while its building is tried again. */
const FIXED_FOR = { ms: 15 * 60_000 };
/** The queue counts whole seconds by the clock of the database; the rest is waited for here. */
const LONGEST_WAIT_MS = 60_000;

/** Builds a release that was asked for, writes its files, then publishes it in one transaction. Doing it twice is doing it once. */
@Injectable()
export class PublishRelease {
  constructor(
    private readonly gather: GatherRelease,
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
  async run({ edition, revision }: PublishReleaseOrder): Promise<void> {
    // However often an order is taken up, one at a time builds: whoever comes later finds it published.
    await withDatabaseLock(this.config.DATABASE_URL, `publication of ${edition}/${revision}`, () => this.build(edition, revision));
  }

  private async build(edition: string, revision: number): Promise<void> {
    const release = await this.releases.state(edition, revision);
    if (release?.state !== 'building') return;
    await this.untilDue(release.publishAt);
    const publishedAt = await this.database.transaction((tx) => this.store.fixTime(tx, release.id, this.clock.now(), FIXED_FOR));
    if (publishedAt === null) return;
    const inputs = await this.gather.run(edition, revision, publishedAt, release.erratum as ReleaseRequest['erratum']);
    const computed = computeRelease(inputs);
    const tables = checked(computed);
    const files = sealedFiles(inputs, computed, await verifyScript());
    const erratum = tables[0]?.erratum ?? null;
    if (tables.every(({ overall }) => overall.length === 0)) throw new Problem(releaseProblems['releases/no-standings']);
    const { softwareVersion, previousDigest } = inputs;
    const manifest = manifestOf(files, { edition, revision, publishedAt: publishedAt.toISOString(), softwareVersion, previousDigest });
    const text = canonicalJson(manifest);
    const signature = await this.key.sign(text);
    await this.write(releaseFolder(edition, revision, sha256(text)), [
      ...files,
      { path: 'manifest.json', content: text },
      { path: 'signature.json', content: signature },
    ]);
    await this.publish(
      { ...release, edition, revision },
      {
        manifest: text,
        signature,
        digest: sha256(text),
        previousDigest,
        publishedAt,
        ...(erratum ? { erratum } : {}),
      },
    );
  }

  private async untilDue(publishAt: Date | null): Promise<void> {
    const early = publishAt === null ? 0 : publishAt.getTime() - this.clock.now().getTime();
    if (early > LONGEST_WAIT_MS) throw new Error(`Its time, ${publishAt?.toISOString() ?? ''}, has not come by the clock of this machine.`);
    if (early > 0) await pause(early);
  }

  private async write(folder: string, files: readonly Pick<SealedFile, 'path' | 'content'>[]): Promise<void> {
    for (const { path, content } of files) await this.files.write(`${folder}/${path}`, content);
    await pressFiles(this.files, folder, files);
  }

  private async publish(release: { id: string; editionId: string; edition: string; revision: number }, built: BuiltRelease): Promise<void> {
    const { edition, revision } = release;
    await this.jobs.prepare(BUILD_SITE);
    await this.database.transaction(async (tx) => {
      const isPublished = await this.store.publish(tx, release, built);
      if (!isPublished) return;
      await this.jobs.order(tx, BUILD_SITE, { edition, revision });
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

const SCHEMAS = [
  [/^documents\/edition\.json$/, editionFileSchema],
  [/^documents\/divisions\/[^/]+\/edition\.json$/, editionDocumentSchema],
  [/^documents\/(divisions\/[^/]+\/)?standings\//, categoryDocumentSchema],
  [/^documents\/variants\//, variantDocumentSchema],
] as const;

/** Holds each document against its schema before it is stored for good; answers the tables of what is compared. */
function checked(files: readonly ReleaseFile[]): EditionDocument[] {
  for (const { path, content } of files) SCHEMAS.find(([form]) => form.test(path))?.[1].parse(JSON.parse(content));
  const { outputs } = JSON.parse(files.find(({ path }) => path === 'bundle.json')?.content ?? '') as Bundle;
  return tablesIn(outputs).map(({ edition }) => edition);
}

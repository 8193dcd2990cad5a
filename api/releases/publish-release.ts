import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { FileStore } from '../platform/file-store/file-store.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { Jobs } from '../platform/jobs/jobs.js';
import { categoryDocumentSchema, editionDocumentSchema, variantDocumentSchema } from '../public-api/release-documents.schemas.js';
import type { CategoryDocument, EditionDocument, Manifest } from '../public-api/release-documents.schemas.js';
import { canonicalJson } from './canonical-json.js';
import { bundleOf } from './documents/bundle.js';
import { catalogueDocument, methodDocuments } from './documents/catalogue-documents.js';
import { categoryDocuments } from './documents/category-document.js';
import { csvFiles } from './documents/csv-files.js';
import { editionDocument } from './documents/edition-document.js';
import type { ReleaseContext } from './documents/release-context.js';
import { variantDocuments } from './documents/variant-document.js';
import { computeErratum } from './erratum.js';
import type { Revision } from './erratum.js';
import { GatherRelease } from './gather-release.js';
import { jsonFile, manifestOf } from './release-files.js';
import type { ReleaseFile } from './release-files.js';
import { BUILD_SITE } from './release-orders.js';
import type { PublishReleaseOrder } from './release-orders.js';
import { releaseProblems } from './releases.errors.js';
import { releaseFolder, ReleasesReadModel } from './releases.read-model.js';
import { ReleasesStore } from './releases.store.js';
import { SOFTWARE_VERSION } from './software-version.js';

type Erratum = EditionDocument['erratum'];

/** Builds a release that was asked for, writes its files, then publishes it in one transaction. Doing it twice is doing it once. */
@Injectable()
export class PublishRelease {
  constructor(
    private readonly gather: GatherRelease,
    private readonly releases: ReleasesReadModel,
    private readonly store: ReleasesStore,
    private readonly files: FileStore,
    private readonly database: Database,
    private readonly jobs: Jobs,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run({ edition, revision }: PublishReleaseOrder): Promise<void> {
    const release = await this.releases.state(edition, revision);
    if (release?.state !== 'building') return;
    const publishedAt = this.clock.now();
    const context = await this.gather.run(edition, revision, publishedAt);
    if (context.computed.standings.overall.length === 0) throw new Problem(releaseProblems['releases/no-standings']);
    const erratum = await this.erratumOf(context, release.erratum as Erratum);
    const files = filesOf(context, erratum);
    const previousDigest = await this.previousDigest(context);
    const manifest = manifestOf(files, {
      edition,
      revision,
      publishedAt: publishedAt.toISOString(),
      softwareVersion: SOFTWARE_VERSION,
      previousDigest,
    });
    await this.write(manifest, files);
    await this.publish({ id: release.id, editionId: release.editionId }, manifest, publishedAt, erratum);
  }

  /** The release before: the last revision of the same edition, else the current one of the edition before. */
  private async previousDigest({ revision, computed: { edition } }: ReleaseContext): Promise<string | null> {
    const before =
      revision > 1 ? await this.releases.find(edition.slug) : edition.previous === null ? null : await this.releases.find(edition.previous);
    return before?.digest ?? null;
  }

  private async erratumOf(context: ReleaseContext, stated: Erratum): Promise<Erratum> {
    const before = stated && (await this.releases.find(context.computed.edition.slug));
    const edition = before && (await this.releases.document<EditionDocument>(before, 'documents/edition.json'));
    if (!stated || !before || !edition) return null;
    const paths = before.manifest.files.map(({ path }) => path).filter((path) => path.startsWith('documents/standings/'));
    const categories = await Promise.all(paths.map((path) => this.releases.document<CategoryDocument>(before, path)));
    const old: Revision = { edition, categories: categories.filter((document) => document !== null) };
    return computeErratum(stated, old, { edition: editionDocument(context, null), categories: categoryDocuments(context) });
  }

  private async write(manifest: Manifest, files: readonly ReleaseFile[]): Promise<void> {
    const text = canonicalJson(manifest);
    const folder = releaseFolder(manifest.edition, manifest.revision, sha256(text));
    for (const { path, content } of files) await this.files.write(`${folder}/${path}`, content);
    await this.files.write(`${folder}/manifest.json`, text);
  }

  private async publish(
    release: { id: string; editionId: string },
    manifest: Manifest,
    publishedAt: Date,
    erratum: Erratum,
  ): Promise<void> {
    const text = canonicalJson(manifest);
    const digest = sha256(text);
    const { edition, revision, previousDigest } = manifest;
    await this.jobs.prepare(BUILD_SITE);
    await this.database.transaction(async (tx) => {
      const isPublished = await this.store.publish(tx, release, {
        digest,
        previousDigest,
        manifest: text,
        publishedAt,
        ...(erratum ? { erratum } : {}),
      });
      if (!isPublished) return;
      await this.jobs.order(tx, BUILD_SITE, { edition, revision });
      await this.audit.record(tx, {
        actorId: null,
        action: 'release.published',
        objectType: 'release',
        objectId: `${edition}/${revision}`,
        after: { digest },
      });
    });
  }
}

/** Every file of a release; each document is held against its schema before it is stored for good. */
function filesOf(context: ReleaseContext, erratum: Erratum): ReleaseFile[] {
  const edition = editionDocumentSchema.parse(editionDocument(context, erratum));
  const categories = categoryDocuments(context).map((document) => categoryDocumentSchema.parse(document));
  const variants = variantDocuments(context, edition, categories).map((document) => variantDocumentSchema.parse(document));
  return [
    jsonFile('bundle.json', bundleOf(context, edition, categories, variants)),
    jsonFile('documents/edition.json', edition),
    ...categories.map((document) => jsonFile(`documents/standings/${document.category.code}.json`, document)),
    ...variants.map((document) => jsonFile(`documents/variants/${document.variant.slug}.json`, document)),
    jsonFile('documents/catalogue.json', catalogueDocument(context)),
    ...methodDocuments(context).map((document) => jsonFile(`documents/methods/${document.slug}-${document.number}.json`, document)),
    ...csvFiles(edition, categories, variants),
  ];
}

import { Injectable } from '@nestjs/common';
import { EditionRows } from '../editions/edition-rows.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import { Problem } from '../platform/errors/problem.js';
import { FileStore } from '../platform/file-store/file-store.js';
import { manifestSchema } from '../contract/documents/release-documents.js';
import type {
  CategoryDocument,
  EditionDocument,
  EditionOfDivisions,
  Manifest,
  ReleaseSummary,
} from '../contract/documents/release-documents.js';
import type { ClaimsDocument } from '../contract/documents/claims-document.js';
import type { HouseDocument } from '../contract/documents/house-document.js';
import type { RemarksDocument } from '../contract/documents/remarks-document.js';
import { cellsOf, contentCell, withContents } from '../reckoning/cells.js';
import type { RevisionCells } from '../reckoning/release-inputs.js';
import { releaseProblems } from './releases.errors.js';

/** Folder of a release in the file store; with the digest in its name, two workers that build the same revision cannot mix their files. */
export const releaseFolder = (edition: string, revision: number, digest: string): string => `releases/${edition}/${revision}/${digest}`;

/** A published release with its manifest. */
export interface PublishedRelease {
  readonly edition: string;
  readonly revision: number;
  readonly digest: string;
  readonly manifest: Manifest;
  readonly manifestBytes: string;
  /** Text of signature.json. */
  readonly signature: string;
}

const PUBLISHED = { in: ['published', 'superseded'] };

/** Published releases, and the bytes of their files. Nothing unpublished is reachable here. */
@Injectable()
export class ReleasesReadModel {
  constructor(
    private readonly database: Database,
    private readonly editions: EditionsReadModel,
    private readonly rows: EditionRows,
    private readonly files: FileStore,
  ) {}

  /** All published revisions, newest edition first. */
  async list(): Promise<ReleaseSummary[]> {
    const rows = await this.database.client.release.findMany({ where: { state: PUBLISHED }, orderBy: { revision: 'desc' } });
    const editions = await this.editions.named(rows.map(({ editionId }) => editionId));
    rows.sort((one, other) => newestFirst(editions.of(one.editionId).slug, editions.of(other.editionId).slug));
    return rows.map((row) => ({
      edition: editions.of(row.editionId).slug,
      editionName: editions.of(row.editionId).name,
      revision: row.revision,
      status: row.state as 'published' | 'superseded',
      digest: row.digest ?? '',
      publishedAt: row.publishedAt?.toISOString() ?? '',
      erratum: row.erratum as ReleaseSummary['erratum'],
    }));
  }

  /** The same once a revision that waits is published too. */
  async listOnce(
    edition: string,
    revision: number,
    built: Pick<ReleaseSummary, 'digest' | 'publishedAt' | 'erratum'>,
  ): Promise<ReleaseSummary[]> {
    const standing = await this.list();
    const { editionId } = (await this.state(edition, revision)) ?? {};
    if (editionId === undefined) return standing;
    const { name: editionName } = (await this.editions.named([editionId])).of(editionId);
    const isBefore = (one: ReleaseSummary): boolean => one.edition > edition;
    return [
      ...standing.filter(isBefore),
      { edition, editionName, revision, status: 'published', ...built },
      ...standing.filter((one) => !isBefore(one)).map((one) => (one.edition === edition ? { ...one, status: 'superseded' as const } : one)),
    ];
  }

  /** A published revision, or the current one of an edition; null when there is none. */
  async find(edition: string, revision?: number): Promise<PublishedRelease | null> {
    return this.first(edition, revision === undefined ? { state: 'published' } : { revision, state: PUBLISHED });
  }

  /** The release of an edition that readers saw at a moment; null when there was none. */
  async currentAt(edition: string, moment: Date): Promise<PublishedRelease | null> {
    return this.first(edition, { state: PUBLISHED, publishedAt: { lte: moment } });
  }

  private async first(edition: string, where: Prisma.ReleaseWhereInput): Promise<PublishedRelease | null> {
    const editionId = await this.rows.idOf(edition);
    if (editionId === null) return null;
    const row = await this.database.client.release.findFirst({ where: { ...where, editionId }, orderBy: { revision: 'desc' } });
    if (!row || row.manifest === null || row.digest === null) return null;
    return {
      edition,
      revision: row.revision,
      digest: row.digest,
      manifest: manifestSchema.parse(JSON.parse(row.manifest)),
      manifestBytes: row.manifest,
      signature: row.signature ?? '',
    };
  }

  /**
   * Bytes of a file of a release, as stored; null when the release has no such file.
   * @throws Problem when it has one and it is lost
   */
  async bytes(release: PublishedRelease, path: string): Promise<{ bytes: Buffer; mediaType: string; digest: string } | null> {
    const listed = release.manifest.files.find((file) => file.path === path);
    if (!listed) return null;
    const bytes = await this.files.read(`${releaseFolder(release.edition, release.revision, release.digest)}/${path}`);
    if (!bytes)
      throw new Problem(releaseProblems['releases/file-lost'], `Release ${release.edition}/${release.revision} has lost ${path}.`);
    return { bytes, mediaType: listed.mediaType, digest: listed.sha256 };
  }

  /** A document of a release; null when there is none. */
  async document<T>(release: PublishedRelease, path: string): Promise<T | null> {
    const file = await this.bytes(release, path);
    return file && (JSON.parse(file.bytes.toString('utf8')) as T);
  }

  /** A document that a release must have. */
  async kept<T>(release: PublishedRelease, path: string): Promise<T> {
    const document = await this.document<T>(release, path);
    if (document === null) throw new Error(`Release ${release.edition}/${release.revision} has no ${path}; expected by this program.`);
    return document;
  }

  /** The release that was published last, with its signature; null when nothing ever was. */
  async lastSigned(): Promise<{ edition: string; revision: number; signature: string } | null> {
    const row = await this.database.client.release.findFirst({
      where: { state: PUBLISHED, signature: { not: null } },
      orderBy: [{ publishedAt: 'desc' }, { revision: 'desc' }],
    });
    if (!row) return null;
    const edition = (await this.editions.slugs([row.editionId])).of(row.editionId);
    return { edition, revision: row.revision, signature: row.signature ?? '' };
  }

  /** All documents of a folder of a release. */
  async folder<T>(release: PublishedRelease, folder: string): Promise<T[]> {
    const paths = release.manifest.files.map(({ path }) => path).filter((path) => path.startsWith(folder));
    return Promise.all(paths.map((path) => this.kept<T>(release, path)));
  }

  /** What readers see of a release, cell by cell. */
  async cellsOf(release: PublishedRelease): Promise<RevisionCells> {
    const edition = await this.kept<EditionDocument | EditionOfDivisions>(release, 'documents/edition.json');
    const folders = 'divisions' in edition ? edition.divisions.map(({ slug }) => `documents/divisions/${slug}`) : ['documents'];
    const tables = await Promise.all(
      folders.map(async (folder) => ({
        edition: await this.kept<EditionDocument>(release, `${folder}/edition.json`),
        categories: await this.folder<CategoryDocument>(release, `${folder}/standings/`),
      })),
    );
    const [claims, house, remarks] = await Promise.all([
      this.document<ClaimsDocument>(release, 'documents/claims.json'),
      this.document<HouseDocument>(release, 'documents/house.json'),
      this.document<RemarksDocument>(release, 'documents/remarks.json'),
    ]);
    return cellsOf({ tables, claims, house, remarks });
  }

  /** The same with the digest of every document, read one after the other: of a large release nobody holds all. */
  async contentsOf(release: PublishedRelease): Promise<RevisionCells> {
    const paths = release.manifest.files.map(({ path }) => path).filter((path) => path.startsWith('documents/'));
    const contents = new Map<string, string>();
    for (const path of paths) contents.set(...contentCell(path, await this.kept<object>(release, path)));
    return withContents(await this.cellsOf(release), contents);
  }

  /** Releases that were asked for and are not published yet. */
  async waiting(): Promise<{ id: string; edition: string; revision: number; publishAt: Date | null }[]> {
    const rows = await this.database.client.release.findMany({ where: { state: 'building' } });
    const editions = await this.editions.named(rows.map(({ editionId }) => editionId));
    return rows.map(({ id, editionId, revision, publishAt }) => ({ id, edition: editions.of(editionId).slug, revision, publishAt }));
  }

  /** Those of them whose time has come. */
  async due(now: Date): Promise<{ edition: string; revision: number }[]> {
    const due = (await this.waiting()).filter(({ publishAt }) => publishAt === null || publishAt <= now);
    return due.map(({ edition, revision }) => ({ edition, revision }));
  }

  async state(edition: string, revision: number) {
    const editionId = await this.rows.idOf(edition);
    if (editionId === null) return null;
    return this.database.client.release.findFirst({
      where: { editionId, revision },
      select: { id: true, editionId: true, state: true, digest: true, erratum: true, publishAt: true },
    });
  }
}

const newestFirst = (one: string, other: string): number => (one === other ? 0 : one < other ? 1 : -1);

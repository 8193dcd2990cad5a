import { Inject, Injectable, Logger } from '@nestjs/common';
import type { OnApplicationShutdown } from '@nestjs/common';
import type { Client } from 'pg';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { Watch } from '../platform/database/watch-channel.js';
import { Problem } from '../platform/errors/problem.js';
import type { Coding } from '../platform/http/headers/compress.js';
import { FileStore } from '../platform/file-store/file-store.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import type { Manifest, ReleaseSignature, ReleaseSummary, SigningKeyResponse } from '../contract/documents/release-documents.js';
import { compressedPath } from './publication/compressed-files.js';
import { releaseFolder } from './releases.read-model.js';
import { releaseProblems } from './releases.errors.js';

/** A file of a release as its manifest lists it, the manifest and the signature too. */
export interface PublishedFile {
  readonly digest: string;
  readonly mediaType: string;
  readonly sizeBytes: number;
}

/** A published release as it is kept in memory. */
export interface KnownRelease extends ReleaseSummary {
  /** Folder in the file store. */
  readonly folder: string;
  readonly files: ReadonlyMap<string, PublishedFile>;
  /** DER, base64. */
  readonly publicKey: string;
}

interface Row extends Omit<ReleaseSummary, 'publishedAt'> {
  readonly publishedAt: Date;
}

type Content = Pick<KnownRelease, 'folder' | 'files' | 'publicKey'>;

/** As they stand in the database. */
interface Seal {
  readonly manifest: string;
  readonly signature: string;
}

const CHANNEL = 'releases';
const LOOK_EVERY_MS = 1000;
const JSON_TYPE = 'application/json';
const LIST = `
  SELECT e.slug AS edition, e.name AS "editionName", r.revision, r.state AS status, r.digest, r.published_at AS "publishedAt", r.erratum
  FROM release r JOIN edition e ON e.id = r.edition_id
  WHERE r.state IN ('published', 'superseded') ORDER BY e.slug COLLATE "C" DESC, r.revision DESC`;

/** What is published, in memory: which file of which digest stands where. It is told of new releases, and goes on while the database is down. */
@Injectable()
export class PublishedReleases implements OnApplicationShutdown {
  private readonly log = new Logger(PublishedReleases.name);
  private releases: readonly KnownRelease[] | null = null;
  private listed = '';
  private readonly holders = new Map<string, KnownRelease>();
  private watch: Watch | undefined;

  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly files: FileStore,
  ) {}

  /** Loads what is published and keeps in step from then on; a database that does not answer is asked again and again. */
  async start(): Promise<void> {
    const look = (client: Client) => this.look(client);
    this.watch = new Watch({ databaseUrl: this.config.DATABASE_URL, channel: CHANNEL, everyMs: LOOK_EVERY_MS, look });
    await this.watch.start();
  }

  /** Comes back when what was published before the call is known here; at once in a program that serves nothing. */
  async catchUp(): Promise<void> {
    await this.watch?.lookNow();
  }

  async onApplicationShutdown(): Promise<void> {
    await this.watch?.stop();
  }

  /**
   * All published revisions, newest edition first.
   * @throws Problem when nothing was ever loaded
   */
  all(): readonly KnownRelease[] {
    if (this.releases === null) throw new Problem(releaseProblems['releases/not-loaded'], undefined, [], { 'Retry-After': '5' });
    return this.releases;
  }

  /** All of them as the list of releases shows them. */
  list(): ReleaseSummary[] {
    return this.all().map(({ folder: _, files: __, publicKey: ___, ...summary }) => summary);
  }

  /** A published revision, or the current one of an edition; undefined when there is none. */
  find(edition: string, revision?: number): KnownRelease | undefined {
    return this.all().find(
      (one) => one.edition === edition && (revision === undefined ? one.status === 'published' : one.revision === revision),
    );
  }

  /** Current release of the newest edition, or of the newest one that holds a file. */
  newest(path?: string): KnownRelease | undefined {
    const all = this.all();
    if (path === undefined) return all.find(({ status }) => status === 'published');
    const known = this.holders.get(path);
    if (known) return known;
    const found = all.find(({ status, files }) => status === 'published' && files.has(path));
    // What nobody holds is not remembered: anybody can ask for endlessly many names.
    if (found) this.holders.set(path, found);
    return found;
  }

  /**
   * A document of a release; null when it has none of that name.
   * @throws Problem when it has one and it is lost
   */
  async document<T>(release: KnownRelease, path: string): Promise<T | null> {
    if (!release.files.has(path)) return null;
    const bytes = await this.files.read(`${release.folder}/${path}`);
    if (!bytes) throw lost(release, path);
    return JSON.parse(bytes.toString('utf8')) as T;
  }

  /** Bytes of the compressed form of a file; null when it was not made. */
  compressed({ folder }: KnownRelease, path: string, coding: Coding): Promise<Buffer | null> {
    return this.files.read(compressedPath(folder, path, coding));
  }

  /** Public keys that releases were signed with, newest first, each with the day of its first release. */
  signingKeys(): SigningKeyResponse[] {
    const keys = new Map<string, SigningKeyResponse>();
    for (const { publicKey, publishedAt } of this.all().toSorted((a, b) => (a.publishedAt < b.publishedAt ? -1 : 1))) {
      const fingerprint = sha256(Buffer.from(publicKey, 'base64'));
      if (!keys.has(publicKey)) keys.set(publicKey, { publicKey, fingerprint, firstUsedAt: publishedAt });
    }
    return [...keys.values()].reverse();
  }

  private async look(client: Client): Promise<void> {
    const { rows } = await client.query<Row>(LIST);
    const listed = JSON.stringify(rows);
    if (listed === this.listed) return;
    const known = new Map(this.releases?.map((release) => [release.digest, release]));
    const releases: KnownRelease[] = [];
    for (const row of rows) {
      const content = known.get(row.digest) ?? (await this.load(client, row));
      if (!content) continue;
      const { folder, files, publicKey } = content;
      releases.push({ ...row, publishedAt: row.publishedAt.toISOString(), folder, files, publicKey });
    }
    this.releases = releases;
    this.holders.clear();
    this.listed = listed;
  }

  /** Null of a release whose manifest or signature on record cannot be read: it must not hold up the others. */
  private async load(client: Client, row: Row): Promise<Content | null> {
    const { rows } = await client.query<Seal>('SELECT manifest, signature FROM release WHERE digest = $1', [row.digest]);
    try {
      return contentOf(row, rows[0] ?? { manifest: '', signature: '' });
    } catch (error) {
      this.log.error(
        `Release ${row.edition}/${row.revision} is not shown, the others are: its manifest or signature in the database cannot be read (${String(error)}). Restore the database from a backup; npm run check-backup says which are whole.`,
      );
      return null;
    }
  }
}

export const lost = ({ edition, revision }: ReleaseSummary, path: string): Problem =>
  new Problem(releaseProblems['releases/file-lost'], `Release ${edition}/${revision} has lost ${path}.`);

/** @throws Error when manifest or signature is not one */
function contentOf({ edition, revision, digest }: Row, { manifest, signature }: Seal): Content {
  const json = (text: string, of = sha256(text)) => ({ digest: of, mediaType: JSON_TYPE, sizeBytes: Buffer.byteLength(text) });
  const listed = (JSON.parse(manifest) as Manifest).files.map(
    ({ path, sha256: of, mediaType, sizeBytes }) => [path, { digest: of, mediaType, sizeBytes }] as const,
  );
  return {
    folder: releaseFolder(edition, revision, digest),
    files: new Map([...listed, ['manifest.json', json(manifest, digest)] as const, ['signature.json', json(signature)] as const]),
    publicKey: (JSON.parse(signature) as ReleaseSignature).publicKey,
  };
}

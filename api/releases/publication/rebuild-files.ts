import { Injectable } from '@nestjs/common';
import { FileStore } from '../../platform/file-store/file-store.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import type { ReleaseSummary } from '../../contract/documents/release-documents.js';
import { Archive, ARCHIVE } from '../../reckoning/release-archive.js';
import { whole } from '../../reckoning/release-files.js';
import { filesOf } from '../../reckoning/sealed-files.js';
import type { ReleaseInputs } from '../../reckoning/release-inputs.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';
import { GatherRelease } from './gather-release.js';
import { compressFile } from './compressed-files.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import type { PublishedRelease } from '../releases.read-model.js';
import { verifyScript } from '../verify/verify-script.js';

/** What became of the lost files of a release. */
export interface RebuiltFiles {
  /** "2026/1". */
  readonly release: string;
  readonly rebuilt: readonly string[];
  /** These nothing here makes again byte for byte; a backup has them. */
  readonly lost: readonly string[];
}

const BUNDLE = 'bundle.json';

/**
 * Makes lost or changed files of releases again: seals from the record, documents from the bundle, the bundle from the record, what another
 * release has too from there. A file is written only when its digest is the one that was signed.
 */
@Injectable()
export class RebuildFiles {
  constructor(
    private readonly releases: ReleasesReadModel,
    private readonly files: FileStore,
    private readonly gather: GatherRelease,
  ) {}

  /** Releases of which files were lost, oldest first: a later one rests on those before. */
  async run(): Promise<RebuiltFiles[]> {
    const published = (await this.releases.list()).toReversed().toSorted(byTime);
    const done: RebuiltFiles[] = [];
    for (const { edition, revision } of published) {
      const release = await this.releases.find(edition, revision);
      if (release) done.push(await this.rebuild(release));
    }
    return done.filter(({ rebuilt, lost }) => rebuilt.length + lost.length > 0);
  }

  private async rebuild(release: PublishedRelease): Promise<RebuiltFiles> {
    const rebuilt: string[] = [];
    const take = async (contents: Contents) => {
      const missing = Map.groupBy(await this.missing(release), ([, digest]) => digest);
      for await (const content of contents)
        for (const [path] of takeOut(missing, sha256(content))) {
          await this.files.write(`${folderOf(release)}/${path}`, content);
          await compressFile(this.files, folderOf(release), path, content);
          rebuilt.push(path);
        }
    };
    // The bundle comes before what is computed from it.
    const sources = [
      () => this.sealsAndScript(release),
      () => this.fromRecord(release),
      () => this.fromBundle(release),
      () => this.twins(release),
      () => this.archive(release),
    ];
    for (const source of sources) {
      if ((await this.missing(release)).size === 0) break;
      await take(source());
    }
    return { release: `${release.edition}/${release.revision}`, rebuilt, lost: [...(await this.missing(release)).keys()] };
  }

  /** Path → digest of each file that is not there as it was signed. */
  private async missing(release: PublishedRelease): Promise<Map<string, string>> {
    const found = new Map<string, string>();
    for (const [path, digest] of digestsOf(release)) {
      const bytes = await this.files.read(`${folderOf(release)}/${path}`);
      if (!bytes || sha256(bytes) !== digest) found.set(path, digest);
    }
    return found;
  }

  private async *sealsAndScript({ manifestBytes, signature }: PublishedRelease): Contents {
    yield* [manifestBytes, signature, (await verifyScript()).content];
  }

  private async *fromBundle(release: PublishedRelease): Contents {
    if ((await this.missing(release)).has(BUNDLE)) return;
    const { inputs } = await this.releases.kept<Bundle>(release, BUNDLE);
    yield* computed(inputs);
  }

  private async *fromRecord(release: PublishedRelease): Contents {
    if (!(await this.missing(release)).has(BUNDLE)) return;
    const inputs = await this.gather.again(release).catch(() => null);
    if (inputs !== null) yield* computed(inputs);
  }

  /** From everything that is in it, once that is whole. */
  private async *archive(release: PublishedRelease): Contents {
    if ([...(await this.missing(release)).keys()].some((path) => path !== ARCHIVE)) return;
    const archive = new Archive();
    const parts: Uint8Array[] = [];
    for (const { path } of release.manifest.files) {
      const bytes = path === ARCHIVE ? null : await this.files.read(`${folderOf(release)}/${path}`);
      if (bytes) parts.push(archive.add(path, bytes));
    }
    yield Buffer.concat([...parts, ...archive.end()]);
  }

  /** Files of other releases with the same digest. */
  private async *twins(release: PublishedRelease): Contents {
    const wanted = new Set((await this.missing(release)).values());
    for (const { edition, revision } of await this.releases.list()) {
      const other = await this.releases.find(edition, revision);
      for (const [path, digest] of other ? digestsOf(other) : []) {
        if (!wanted.has(digest) || !other || other.digest === release.digest) continue;
        const bytes = await this.files.read(`${folderOf(other)}/${path}`);
        if (bytes) yield bytes;
      }
    }
  }
}

/** One file after the other: of a large release nobody holds them all. */
type Contents = AsyncGenerator<string | Uint8Array>;

const byTime = (a: ReleaseSummary, b: ReleaseSummary): number => Date.parse(a.publishedAt) - Date.parse(b.publishedAt);

const folderOf = ({ edition, revision, digest }: PublishedRelease): string => releaseFolder(edition, revision, digest);

const digestsOf = ({ manifest, manifestBytes, signature }: PublishedRelease): (readonly [string, string])[] => [
  ...manifest.files.map(({ path, sha256: digest }) => [path, digest] as const),
  ['manifest.json', sha256(manifestBytes)],
  ['signature.json', sha256(signature)],
];

function takeOut<Value>(map: Map<string, Value[]>, key: string): Value[] {
  const found = map.get(key) ?? [];
  map.delete(key);
  return found;
}

/** A bundle of another format is none that this program computes from. */
function* computed(inputs: ReleaseInputs): Generator<string> {
  try {
    for (const file of filesOf(inputs)) yield whole(file).content;
  } catch {
    return;
  }
}

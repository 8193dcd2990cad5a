import { Inject, Injectable } from '@nestjs/common';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import type {
  CategoryDocument,
  EditionDocument,
  EditionOfDivisions,
  HistoryPoint,
  VariantDocument,
} from '../../contract/documents/release-documents.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';
import { RETOLD } from '../../reckoning/documents/retold.js';
import type { Retold } from '../../reckoning/documents/retold.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import type { PublishedRelease } from '../releases.read-model.js';
import type { PublishedEdition, StandingCheck, StandingFault, ToldPoints } from './published-edition.js';
import { STANDING_CHECKS } from './standing-check-list.js';

/** Faults that somebody has looked at and lets stand, with a name, a reason and a day. */
export const EXCEPTIONS_FILE = 'standing-exceptions.json';
const exceptionsSchema = z.array(
  z.strictObject({
    check: z.string(),
    where: z.string(),
    reason: z.string().trim().min(4),
    allowedBy: z.string().trim().min(1),
    on: z.iso.date(),
  }),
);

const PAGES = 'documents/variants/';

/** What the first check looks at: whether a release is whole. */
type Head = Pick<PublishedEdition, 'name' | 'manifest' | 'manifestText' | 'digest' | 'digests'>;

/** Looks at everything that is published: every file is held against its digest, and what is in them is looked at once for each digest. */
@Injectable()
export class RunStandingChecks {
  /** Digests of releases in which this process found no fault. */
  private readonly stood = new Set<string>();
  /** Files as this process read them. */
  private readonly asRead = new Map<string, { readonly stamp: string; readonly digest: string }>();
  private readonly points = new Map<string, Map<string, HistoryPoint>>();

  constructor(
    private readonly releases: ReleasesReadModel,
    private readonly files: FileStore,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Faults that are not among the named exceptions; where files are lost or changed, these alone, as the other checks read them. */
  async run(): Promise<StandingFault[]> {
    const exceptions = await this.exceptions();
    const faultsOf = (checks: readonly StandingCheck[], published: readonly PublishedEdition[], told: ToldPoints): StandingFault[] =>
      checks
        .flatMap(({ code, run }) => run(published, told).map((fault) => ({ check: code, ...fault })))
        .filter(({ check, where }) => !exceptions.some((one) => one.check === check && one.where === where));
    const [files, ...contents] = STANDING_CHECKS;
    const list = await this.list();
    const heads: Head[] = [];
    for (const release of list) heads.push(await this.headOf(release));
    const broken = faultsOf([files], heads as PublishedEdition[], new Map());
    if (broken.length > 0) return broken;
    const faults: StandingFault[] = [];
    // One after the other: a house of many editions is larger than a machine.
    for (const release of list.filter(({ digest }) => !this.stood.has(digest))) {
      const found: StandingFault[] = [];
      for await (const part of this.contentsOf(release)) found.push(...faultsOf(contents, [part], await this.toldTo(part, list)));
      if (found.length === 0) this.stood.add(release.digest);
      faults.push(...found);
    }
    return faults;
  }

  private async exceptions() {
    const file = join(this.config.DATA_FOLDER, EXCEPTIONS_FILE);
    const text = await readFile(file, 'utf8').catch(() => '[]');
    const parsed = exceptionsSchema.safeParse(JSON.parse(text));
    if (parsed.success) return parsed.data;
    const [issue] = parsed.error.issues;
    throw new Error(
      `${file} is not a list of exceptions: at ${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''}. Each has check, where, reason, allowedBy, on.`,
    );
  }

  private async list(): Promise<PublishedRelease[]> {
    const found: PublishedRelease[] = [];
    for (const { edition, revision } of await this.releases.list()) {
      const release = await this.releases.find(edition, revision);
      if (release) found.push(release);
    }
    return found;
  }

  private async headOf(release: PublishedRelease): Promise<Head> {
    const digests = new Map<string, string>();
    for (const { path } of release.manifest.files) {
      const digest = await this.digestOf(`${folderOf(release)}/${path}`);
      if (digest !== null) digests.set(path, digest);
    }
    return { ...namesOf(release), digests };
  }

  /** A file is read again when it was changed, and by each new process: a house of many editions is larger than what a disk reads in a minute. */
  private async digestOf(path: string): Promise<string | null> {
    const [stamp, known] = [await this.files.stampOf(path), this.asRead.get(path)];
    if (stamp === null) return null;
    if (known?.stamp === stamp) return known.digest;
    const bytes = await this.files.read(path);
    if (!bytes) return null;
    const digest = sha256(bytes);
    this.asRead.set(path, { stamp, digest });
    return digest;
  }

  private async document<T>(release: PublishedRelease, path: string): Promise<T> {
    return JSON.parse((await this.files.read(`${folderOf(release)}/${path}`))?.toString('utf8') ?? 'null') as T;
  }

  private async documents<T>(release: PublishedRelease, paths: readonly string[]): Promise<T[]> {
    const found: T[] = [];
    for (const path of paths) found.push(await this.document<T>(release, path));
    return found;
  }

  /** A release of several divisions one division after the other: all of a large one would not be held at once. */
  private async *contentsOf(release: PublishedRelease): AsyncGenerator<PublishedEdition> {
    const paths = release.manifest.files.map(({ path }) => path);
    const { outputs } = await this.document<Bundle>(release, 'bundle.json');
    const digests = new Map(release.manifest.files.map(({ path, sha256: digest }) => [path, digest]));
    const file = await this.document<EditionDocument | EditionOfDivisions>(release, 'documents/edition.json');
    const pagesOf = (variants: readonly string[]) => variants.map((slug) => `${PAGES}${slug}.json`).filter((path) => digests.has(path));
    const folders =
      'divisions' in file
        ? file.divisions.map(({ slug, variants }) => [`documents/divisions/${slug}`, pagesOf(variants)] as const)
        : [['documents', paths.filter((path) => path.startsWith(PAGES))] as const];
    for (const [folder, own] of folders) {
      const standings = paths.filter((path) => path.startsWith(`${folder}/standings/`));
      yield {
        ...namesOf(release),
        digests,
        outputs,
        edition: await this.document<EditionDocument>(release, `${folder}/edition.json`),
        categories: await this.documents<CategoryDocument>(release, standings),
        variants: await this.documents<VariantDocument>(release, own),
      };
    }
  }

  /** What the releases that these histories name say of themselves; of a whole release no more than that is kept. */
  private async toldTo({ variants }: PublishedEdition, list: readonly PublishedRelease[]): Promise<ToldPoints> {
    const named = new Set(variants.flatMap(({ history }) => history.slice(0, -1).map(({ edition, revision }) => `${edition}/${revision}`)));
    const told = new Map<string, ReadonlyMap<string, HistoryPoint>>();
    for (const release of list) {
      const { name } = namesOf(release);
      if (named.has(name)) told.set(name, await this.pointsOf(release));
    }
    return told;
  }

  private async pointsOf(release: PublishedRelease): Promise<ReadonlyMap<string, HistoryPoint>> {
    const points = this.points.get(release.digest) ?? new Map<string, HistoryPoint>();
    if (!this.points.has(release.digest)) {
      for (const { variant, point } of await this.historyIn(release)) points.set(variant, point);
      this.points.set(release.digest, points);
    }
    return points;
  }

  /** A release from before it told so itself is asked page by page. */
  private async historyIn(release: PublishedRelease): Promise<Retold['history']> {
    const told = await this.document<Retold | null>(release, RETOLD);
    if (told) return told.history;
    const pages = release.manifest.files.map(({ path }) => path).filter((path) => path.startsWith(PAGES));
    const history: { variant: string; point: HistoryPoint }[] = [];
    for (const page of pages) {
      const { variant, history: points } = await this.document<VariantDocument>(release, page);
      history.push(...points.slice(-1).map((point) => ({ variant: variant.slug, point })));
    }
    return history;
  }
}

const folderOf = ({ edition, revision, digest }: PublishedRelease): string => releaseFolder(edition, revision, digest);

const namesOf = ({ edition, revision, digest, manifest, manifestBytes }: PublishedRelease) => ({
  name: `${edition}/${revision}`,
  manifest,
  digest,
  manifestText: manifestBytes,
});

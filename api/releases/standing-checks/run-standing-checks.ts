import { Inject, Injectable } from '@nestjs/common';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import type { CategoryDocument, EditionDocument, EditionOfDivisions, VariantDocument } from '../../contract/documents/release-documents.js';
import type { Bundle } from '../../reckoning/documents/bundle.js';
import { releaseFolder, ReleasesReadModel } from '../releases.read-model.js';
import type { PublishedRelease } from '../releases.read-model.js';
import type { PublishedEdition, StandingCheck, StandingFault } from './published-edition.js';
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

/** Looks at everything that is published. */
@Injectable()
export class RunStandingChecks {
  constructor(
    private readonly releases: ReleasesReadModel,
    private readonly files: FileStore,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Faults that are not among the named exceptions; where files are lost or changed, these alone, as the other checks read them. */
  async run(): Promise<StandingFault[]> {
    const published = await this.published();
    const exceptions = await this.exceptions();
    const faultsOf = (checks: readonly StandingCheck[]): StandingFault[] =>
      checks
        .flatMap(({ code, run }) => run(published).map((fault) => ({ check: code, ...fault })))
        .filter(({ check, where }) => !exceptions.some((one) => one.check === check && one.where === where));
    const [files, ...contents] = STANDING_CHECKS;
    const broken = faultsOf([files]);
    return broken.length > 0 ? broken : faultsOf(contents);
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

  /** The files that are there, by path: their texts and their digests. */
  private async filesOf({ edition, revision, digest, manifest }: PublishedRelease) {
    const [files, digests] = [new Map<string, string>(), new Map<string, string>()];
    for (const { path } of manifest.files) {
      const bytes = await this.files.read(`${releaseFolder(edition, revision, digest)}/${path}`);
      if (!bytes) continue;
      files.set(path, bytes.toString('utf8'));
      digests.set(path, sha256(bytes));
    }
    return { files, digests };
  }

  private async published(): Promise<PublishedEdition[]> {
    const found: PublishedEdition[] = [];
    for (const { edition, revision, status } of await this.releases.list()) {
      const release = await this.releases.find(edition, revision);
      if (!release) continue;
      const { files, digests } = await this.filesOf(release);
      const read = (path: string): unknown => JSON.parse(files.get(path) ?? 'null');
      const inFolder = (folder: string): unknown[] => [...files.keys()].filter((path) => path.startsWith(folder)).map(read);
      const variants = inFolder('documents/variants/') as VariantDocument[];
      const file = read('documents/edition.json') as EditionDocument | EditionOfDivisions;
      const common = {
        name: `${edition}/${revision}`,
        manifest: release.manifest,
        digest: release.digest,
        manifestText: release.manifestBytes,
        isCurrent: status === 'published',
        files,
        digests,
        bundle: read('bundle.json') as Bundle,
      };
      const folders =
        'divisions' in file
          ? file.divisions.map(({ slug }) => [`documents/divisions/${slug}`, slug] as const)
          : [['documents', undefined] as const];
      for (const [folder, division] of folders)
        found.push({
          ...common,
          edition: read(`${folder}/edition.json`) as EditionDocument,
          categories: inFolder(`${folder}/standings/`) as CategoryDocument[],
          variants: variants.filter((variant) => variant.division?.slug === division),
        });
    }
    return found;
  }
}

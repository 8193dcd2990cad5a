import { Injectable } from '@nestjs/common';
import { Problem } from '../../platform/errors/problem.js';
import { FileStore } from '../../platform/file-store/file-store.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import {
  categoryDocumentSchema,
  editionDocumentSchema,
  editionFileSchema,
  variantDocumentSchema,
} from '../../contract/documents/release-documents.js';
import type { EditionDocument } from '../../contract/documents/release-documents.js';
import type { ReleaseRequest } from '../../contract/endpoints/releases.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { computeRelease } from '../../reckoning/compute-release.js';
import { manifestOf } from '../../reckoning/release-files.js';
import type { ReleaseFile } from '../../reckoning/release-files.js';
import type { ReleaseInputs } from '../../reckoning/release-inputs.js';
import { sealedFiles } from '../../reckoning/sealed-files.js';
import { GatherRelease } from './gather-release.js';
import { compressFiles } from './compressed-files.js';
import { releaseProblems } from '../releases.errors.js';
import { releaseFolder } from '../releases.read-model.js';
import { verifyScript } from '../verify/verify-script.js';

/** A release whose files are written, and that nobody can read yet. */
export interface Built {
  /** Digest of the inputs that it was computed from. */
  readonly from: string;
  /** Text of manifest.json. */
  readonly manifest: string;
  readonly previousDigest: string | null;
  readonly erratum: EditionDocument['erratum'];
}

interface Asked {
  readonly id: string;
  readonly edition: string;
  readonly revision: number;
  readonly erratum: unknown;
}

/** Folder of what is known of builds, one a release by its id; any worker that shares the data folder reads it. */
export const BUILT = 'built';

/** Computes the files of a release and writes them. What was built of the same inputs before is not built again. */
@Injectable()
export class BuildRelease {
  constructor(
    private readonly gather: GatherRelease,
    private readonly files: FileStore,
  ) {}

  async run({ id, edition, revision, erratum }: Asked, publishedAt: Date): Promise<Built> {
    const inputs = await this.gather.run(edition, revision, publishedAt, erratum as ReleaseRequest['erratum']);
    const from = sha256(canonicalJson(inputs));
    const known = await this.files.read(noteOf(id));
    const before = known && (JSON.parse(known.toString('utf8')) as Built);
    if (before?.from === from) return before;
    const built = await this.build(edition, inputs, from);
    await this.files.write(noteOf(id), JSON.stringify(built));
    return built;
  }

  private async build(edition: string, inputs: ReleaseInputs, from: string): Promise<Built> {
    const computed = computeRelease(inputs);
    const tables = checked(computed);
    const files = sealedFiles(inputs, computed, await verifyScript());
    if (tables.every(({ overall }) => overall.length === 0)) throw new Problem(releaseProblems['releases/no-standings']);
    const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
    const manifest = canonicalJson(manifestOf(files, { edition, revision, publishedAt, softwareVersion, previousDigest }));
    const folder = releaseFolder(edition, revision, sha256(manifest));
    const all = [...files, { path: 'manifest.json', content: manifest }];
    for (const { path, content } of all) await this.files.write(`${folder}/${path}`, content);
    await compressFiles(this.files, folder, all);
    return { from, manifest, previousDigest, erratum: tables[0]?.erratum ?? null };
  }
}

const noteOf = (id: string): string => `${BUILT}/${id}/built.json`;

const SCHEMAS = [
  [/^documents\/edition\.json$/, editionFileSchema],
  [/^documents\/divisions\/[^/]+\/edition\.json$/, editionDocumentSchema],
  [/^documents\/(divisions\/[^/]+\/)?standings\//, categoryDocumentSchema],
  [/^documents\/variants\//, variantDocumentSchema],
] as const;

/** Holds each document against its schema before it is stored for good; answers the tables of what is compared. */
function checked(files: readonly ReleaseFile[]): EditionDocument[] {
  return files.flatMap(({ path, content }) => {
    const document = SCHEMAS.find(([form]) => form.test(path))?.[1].parse(JSON.parse(content));
    // Of an edition with several divisions the edition's own document only lists them.
    return path.endsWith('/edition.json') && document && 'overall' in document ? [document as EditionDocument] : [];
  });
}

import { Injectable } from '@nestjs/common';
import { createHash } from 'node:crypto';
import { Readable } from 'node:stream';
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
import type { FileInParts } from '../../reckoning/release-files.js';
import type { ReleaseInputs } from '../../reckoning/release-inputs.js';
import { sealedFiles } from '../../reckoning/sealed-files.js';
import { GatherRelease } from './gather-release.js';
import { HalfWrittenRelease } from './half-written-release.js';
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
/** Files that are written and compressed while the next are computed. */
const AT_ONCE = 4;

/** Computes the files of a release and writes them. What was built of the same inputs before is not built again. */
@Injectable()
export class BuildRelease {
  constructor(
    private readonly gather: GatherRelease,
    private readonly files: FileStore,
  ) {}

  async run({ id, edition, revision, erratum }: Asked, publishedAt: Date): Promise<Built> {
    const inputs = await this.gather.run(edition, revision, publishedAt, erratum as ReleaseRequest['erratum']);
    const from = digestOf(inputs);
    const known = await this.files.read(noteOf(id));
    const before = known && (JSON.parse(known.toString('utf8')) as Built);
    if (before?.from === from) return before;
    const built = await this.build(id, inputs, from);
    await this.files.write(noteOf(id), JSON.stringify(built));
    return built;
  }

  private async build(id: string, inputs: ReleaseInputs, from: string): Promise<Built> {
    const { revision, publishedAt, softwareVersion, previousDigest } = inputs;
    const { slug: edition } = inputs.evidence.edition;
    const half = await HalfWrittenRelease.begin(this.files, releaseFolder(edition, revision, `half-${id}`));
    const tables: Table[] = [];
    let erratum: Built['erratum'] = null;
    const files = Readable.from(sealedFiles(inputs, await verifyScript()));
    await files.forEach(
      async (file: FileInParts) => {
        const bytes = Buffer.concat([...file.parts].map((part) => Buffer.from(part)));
        const document = heldAgainstSchema(file.path, bytes);
        if (file.path === EDITION && document) ({ erratum } = document as EditionDocument);
        // Of an edition with several divisions the edition's own document only lists them.
        if (file.path.endsWith('/edition.json') && document && 'overall' in document) tables.push(document as EditionDocument);
        await half.write(file, bytes);
      },
      { concurrency: AT_ONCE },
    );
    if (!tables.some(isWorthPublishing)) throw new Problem(releaseProblems['releases/no-standings']);
    await half.writeArchive();
    const manifest = await half.seal({ edition, revision, publishedAt, softwareVersion, previousDigest });
    await half.moveTo(releaseFolder(edition, revision, sha256(manifest)));
    return { from, manifest, previousDigest, erratum };
  }
}

type Table = Pick<EditionDocument, 'overall' | 'scheme'>;

/** Places, or values of which nobody could say more. */
const isWorthPublishing = ({ overall, scheme }: Table): boolean =>
  overall.length > 0 || scheme.categories.every(({ unplaced }) => unplaced !== undefined);

const noteOf = (id: string): string => `${BUILT}/${id}/built.json`;

/** Tells of the whole edition, its erratum too. */
const EDITION = 'documents/edition.json';

const SCHEMAS = [
  [/^documents\/edition\.json$/, editionFileSchema],
  [/^documents\/divisions\/[^/]+\/edition\.json$/, editionDocumentSchema],
  [/^documents\/(divisions\/[^/]+\/)?standings\//, categoryDocumentSchema],
  [/^documents\/variants\//, variantDocumentSchema],
] as const;

/** Holds a document against its schema before it is stored for good; undefined of a file without one. */
const heldAgainstSchema = (path: string, bytes: Buffer) =>
  SCHEMAS.find(([form]) => form.test(path))?.[1].parse(JSON.parse(bytes.toString('utf8')));

/** Tells inputs apart, no more: their canonical text is made once, for the bundle. */
function digestOf({ evidence: { submissions, ...evidence }, ...inputs }: ReleaseInputs): string {
  const hash = createHash('sha256');
  for (const part of [inputs, evidence, ...submissions]) hash.update(JSON.stringify(part));
  return hash.digest('hex');
}

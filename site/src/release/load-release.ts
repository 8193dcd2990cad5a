import type { z } from 'zod';
import {
  catalogueDocumentSchema,
  categoryDocumentSchema,
  editionDocumentSchema,
  manifestSchema,
  methodDocumentSchema,
  pairsDocumentSchema,
  recordsDocumentSchema,
  variantDocumentSchema,
  withdrawnDocumentSchema,
  type CatalogueDocument,
  type CategoryDocument,
  type EditionDocument,
  type Manifest,
  type MethodDocument,
  type PairsDocument,
  type RecordsDocument,
  type ReleaseSummary,
  type VariantDocument,
  type WithdrawnDocument,
} from '../../../api/contract/documents/release-documents.js';
import { claimsDocumentSchema, type ClaimsDocument } from '../../../api/contract/documents/claims-document.js';
import { retestsDocumentSchema, type RetestsDocument } from '../../../api/contract/documents/retests-document.js';
import { roundRobinsDocumentSchema, type RoundRobinsDocument } from '../../../api/contract/documents/round-robins-document.js';
import { rigsDocumentSchema, type RigsDocument } from '../../../api/contract/documents/rigs-document.js';
import { verifiedFile } from './verified-file.js';

/** One release: its summary and manifest at hand, its documents fetched, verified and checked when they are asked for. */
export interface Release {
  summary: ReleaseSummary;
  manifest: Manifest;
  /** Where the stored files are served, e.g. `/v1/releases/2026/1/`. */
  address: string;
  /** Slugs of the variants that have a document. */
  variants: string[];
  hasVariant: (slug: string) => boolean;
  /** Size of a file of the release in bytes; undefined when it has no such file. */
  sizeOf: (path: string) => number | undefined;
  edition: () => Promise<EditionDocument>;
  catalogue: () => Promise<CatalogueDocument>;
  category: (code: string) => Promise<CategoryDocument>;
  variant: (slug: string) => Promise<VariantDocument>;
  pairs: () => Promise<PairsDocument>;
  records: () => Promise<RecordsDocument>;
  withdrawn: () => Promise<WithdrawnDocument>;
  /** Null in a release from before this was published. */
  rigs: () => Promise<RigsDocument | null>;
  claims: () => Promise<ClaimsDocument | null>;
  retests: () => Promise<RetestsDocument | null>;
  roundRobins: () => Promise<RoundRobinsDocument | null>;
  method: (slug: string, number: number) => Promise<MethodDocument>;
}

function read<Schema extends z.ZodType>(schema: Schema, path: string, bytes: Uint8Array): z.infer<Schema> {
  const result = schema.safeParse(JSON.parse(new TextDecoder().decode(bytes)));
  if (result.success) return result.data;
  const faults = result.error.issues.map(({ path: at, message }) => `at ${at.join('.')}: ${message}`);
  throw new Error(
    `${path} is not a document that this site can read: ${faults[0] ?? ''}. Build the site with the version of the program that published it.`,
  );
}

/** Remembers what was asked for: many pages share the documents of an edition. */
function remember<Value>(fetch: (key: string) => Promise<Value>): (key: string) => Promise<Value> {
  const known = new Map<string, Promise<Value>>();
  return (key) => {
    const value = known.get(key) ?? fetch(key);
    known.set(key, value);
    return value;
  };
}

/**
 * Opens a release: its manifest is checked against the digest in the list, every document against the manifest.
 * @throws When a file is missing, altered, or not of the published format
 */
export async function loadRelease(summary: ReleaseSummary): Promise<Release> {
  const address = `/v1/releases/${summary.edition}/${summary.revision}/`;
  const manifest = read(manifestSchema, `${address}manifest.json`, await verifiedFile(`${address}manifest.json`, summary.digest));
  const sizes = new Map(manifest.files.map(({ path, sizeBytes }) => [path, sizeBytes]));
  const variants = manifest.files.flatMap(({ path }) => /^documents\/variants\/(.+)\.json$/.exec(path)?.[1] ?? []);
  const entered = new Set(variants);
  const digests = new Map(manifest.files.map(({ path, sha256 }) => [path, sha256]));
  const document = async <Schema extends z.ZodType>(schema: Schema, path: string) => {
    const digest = digests.get(path);
    if (!digest) throw new Error(`${address}manifest.json names no ${path}. The release is not complete: publish the edition again.`);
    return read(schema, address + path, await verifiedFile(address + path, digest));
  };
  const later = async <Schema extends z.ZodType>(schema: Schema, path: string) => (digests.has(path) ? document(schema, path) : null);
  const editions = remember((path) => document(editionDocumentSchema, path));
  const catalogues = remember((path) => document(catalogueDocumentSchema, path));
  return {
    summary,
    manifest,
    address,
    variants,
    hasVariant: (slug) => entered.has(slug),
    sizeOf: (path) => sizes.get(path),
    edition: () => editions('documents/edition.json'),
    catalogue: () => catalogues('documents/catalogue.json'),
    category: remember((code) => document(categoryDocumentSchema, `documents/standings/${code}.json`)),
    variant: (slug) => document(variantDocumentSchema, `documents/variants/${slug}.json`),
    pairs: () => document(pairsDocumentSchema, 'documents/pairs.json'),
    records: () => document(recordsDocumentSchema, 'documents/records.json'),
    rigs: () => later(rigsDocumentSchema, 'documents/rigs.json'),
    roundRobins: () => later(roundRobinsDocumentSchema, 'documents/round-robins.json'),
    retests: () => later(retestsDocumentSchema, 'documents/retests.json'),
    claims: () => later(claimsDocumentSchema, 'documents/claims.json'),
    withdrawn: () => document(withdrawnDocumentSchema, 'documents/withdrawn.json'),
    method: (slug, number) => document(methodDocumentSchema, `documents/methods/${slug}-${number}.json`),
  };
}

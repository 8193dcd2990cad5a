import type { z } from 'zod';
import {
  catalogueDocumentSchema,
  categoryDocumentSchema,
  editionDocumentSchema,
  editionFileSchema,
  manifestSchema,
  methodDocumentSchema,
  pairsDocumentSchema,
  recordsDocumentSchema,
  variantDocumentSchema,
  withdrawnDocumentSchema,
  type CatalogueDocument,
  type CategoryDocument,
  type EditionDocument,
  type EditionOfDivisions,
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
import { houseDocumentSchema, type HouseDocument } from '../../../api/contract/documents/house-document.js';
import { remarksDocumentSchema, type PublishedRemark } from '../../../api/contract/documents/remarks-document.js';
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
  /** What it says of the whole edition; with several divisions their tables stand with each of them. */
  edition: () => Promise<EditionDocument | EditionOfDivisions>;
  /** What is compared, in order: each division, or the release itself where there is one. */
  tables: () => Promise<Tables[]>;
  catalogue: () => Promise<CatalogueDocument>;
  variant: (slug: string) => Promise<VariantDocument>;
  withdrawn: () => Promise<WithdrawnDocument>;
  /** Null in a release from before this was published. */
  rigs: () => Promise<RigsDocument | null>;
  claims: () => Promise<ClaimsDocument | null>;
  retests: () => Promise<RetestsDocument | null>;
  roundRobins: () => Promise<RoundRobinsDocument | null>;
  /** Who publishes; null where the house had not said so. */
  house: () => Promise<HouseDocument | null>;
  /** Caveats and replies; none in a release from before there were any. */
  remarks: () => Promise<PublishedRemark[]>;
  method: (slug: string, number: number) => Promise<MethodDocument>;
}

/** A release with the tables of what is compared. */
export interface Tables extends Release {
  /** Null where the edition has one division, which shows nowhere. */
  division: { slug: string; name: string } | null;
  /** Where their documents lie in the release. */
  folder: string;
  /** Whether an entry is among them. */
  hasEntry: (slug: string) => boolean;
  edition: () => Promise<EditionDocument>;
  category: (code: string) => Promise<CategoryDocument>;
  pairs: () => Promise<PairsDocument>;
  records: () => Promise<RecordsDocument>;
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
  const editions = remember((path) => document(editionFileSchema, path));
  const edition = () => editions('documents/edition.json');
  const catalogues = remember((path) => document(catalogueDocumentSchema, path));
  const tablesIn = (folder: string, division: Tables['division'], hasEntry: Tables['hasEntry']): Tables => {
    const overall = remember((path) => document(editionDocumentSchema, path));
    return {
      ...release,
      division,
      folder,
      hasEntry,
      edition: () => overall(`${folder}/edition.json`),
      category: remember((code) => document(categoryDocumentSchema, `${folder}/standings/${code}.json`)),
      pairs: () => document(pairsDocumentSchema, `${folder}/pairs.json`),
      records: () => document(recordsDocumentSchema, `${folder}/records.json`),
    };
  };
  const allRemarks = remember(async (path) => (await later(remarksDocumentSchema, path))?.items ?? []);
  const allRigs = remember((path) => later(rigsDocumentSchema, path));
  const compared = remember(async () => {
    const file = await edition();
    if (!('divisions' in file)) return [tablesIn('documents', null, (slug) => entered.has(slug))];
    return file.divisions.map(({ slug, name, variants: own }) =>
      tablesIn(`documents/divisions/${slug}`, { slug, name }, (variant) => own.includes(variant)),
    );
  });
  const release: Release = {
    summary,
    manifest,
    address,
    variants,
    hasVariant: (slug) => entered.has(slug),
    sizeOf: (path) => sizes.get(path),
    edition,
    tables: () => compared(''),
    catalogue: () => catalogues('documents/catalogue.json'),
    variant: (slug) => document(variantDocumentSchema, `documents/variants/${slug}.json`),
    rigs: () => allRigs('documents/rigs.json'),
    roundRobins: () => later(roundRobinsDocumentSchema, 'documents/round-robins.json'),
    retests: () => later(retestsDocumentSchema, 'documents/retests.json'),
    claims: () => later(claimsDocumentSchema, 'documents/claims.json'),
    house: () => later(houseDocumentSchema, 'documents/house.json'),
    remarks: () => allRemarks('documents/remarks.json'),
    withdrawn: () => document(withdrawnDocumentSchema, 'documents/withdrawn.json'),
    method: (slug, number) => document(methodDocumentSchema, `documents/methods/${slug}-${number}.json`),
  };
  return release;
}

/** JSON Schemas of every public document, for those who check what they read. Pure. */
import { z } from 'zod';
import type { ZodType } from 'zod';
import { publicChangesResponse } from '../contract/documents/changes.js';
import { claimsDocumentSchema } from '../contract/documents/claims-document.js';
import { provenanceResponse } from '../contract/documents/provenance.js';
import * as documents from '../contract/documents/release-documents.js';
import { houseDocumentSchema } from '../contract/documents/house-document.js';
import { remarksDocumentSchema } from '../contract/documents/remarks-document.js';
import { retestsDocumentSchema } from '../contract/documents/retests-document.js';
import { rigsDocumentSchema } from '../contract/documents/rigs-document.js';
import { roundRobinsDocumentSchema } from '../contract/documents/round-robins-document.js';
import { releasesResponse, signingKeysResponse } from '../contract/endpoints/public-api.js';
import { webhookEventSchema } from '../contract/endpoints/webhooks.js';

/** Version of the schemas: raised when a field goes or means something else, never for one that is added. */
export const SCHEMAS_VERSION = 1;
const GROWS =
  'Within a version fields, kinds and codes are only added: ignore what you do not know. A change of meaning gets another version at another address; this one stays.';

const SCHEMAS: Readonly<Record<string, ZodType>> = {
  releases: releasesResponse,
  'signing-keys': signingKeysResponse,
  changes: publicChangesResponse,
  event: webhookEventSchema,
  manifest: documents.manifestSchema,
  signature: documents.releaseSignatureSchema,
  edition: documents.editionFileSchema,
  category: documents.categoryDocumentSchema,
  variant: documents.variantDocumentSchema,
  records: documents.recordsDocumentSchema,
  pairs: documents.pairsDocumentSchema,
  sensitivity: documents.sensitivityDocumentSchema,
  withdrawn: documents.withdrawnDocumentSchema,
  catalogue: documents.catalogueDocumentSchema,
  method: documents.methodDocumentSchema,
  house: houseDocumentSchema,
  remarks: remarksDocumentSchema,
  claims: claimsDocumentSchema,
  rigs: rigsDocumentSchema,
  retests: retestsDocumentSchema,
  'round-robins': roundRobinsDocumentSchema,
  provenance: provenanceResponse,
};

export const SCHEMA_NAMES: readonly string[] = Object.keys(SCHEMAS);

/** @param house address of the house @returns null where no document is called so */
export function schemaOf(name: string, house: string): Record<string, unknown> | null {
  const schema = Object.hasOwn(SCHEMAS, name) ? SCHEMAS[name] : undefined;
  if (!schema) return null;
  const made = z.toJSONSchema(schema, {
    io: 'output',
    unrepresentable: 'any',
    // What a later program adds is no fault of the document.
    override: ({ jsonSchema }) => {
      if (jsonSchema.additionalProperties === false) delete jsonSchema.additionalProperties;
    },
  });
  return { ...made, $id: `${house}/v1/schemas/${SCHEMAS_VERSION}/${name}`, title: name, $comment: GROWS };
}

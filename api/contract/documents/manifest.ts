/** What says of a release that it is whole, whose it is, and where it stands among others. */
import { z } from 'zod';
import { erratumSchema } from './corrections.js';
import { formatVersion, slug } from './published-fields.js';

export const manifestSchema = z
  .strictObject({
    formatVersion,
    edition: slug,
    revision: z.int(),
    publishedAt: z.iso.datetime(),
    softwareVersion: z.string(),
    previousDigest: z.string().nullable().describe('SHA-256 of the manifest of the release before, the chain'),
    files: z
      .array(z.strictObject({ path: z.string(), mediaType: z.string(), sizeBytes: z.int(), sha256: z.string().regex(/^[0-9a-f]{64}$/) }))
      .describe('Every file with its digest'),
  })
  .describe('Manifest of a release; its SHA-256 is the digest of the release');

export const releaseSignatureSchema = z
  .strictObject({
    formatVersion: z.literal(1),
    algorithm: z.literal('Ed25519').describe('RFC 8032'),
    signed: z.literal('manifest.json').describe('File whose bytes are signed'),
    publicKey: z.string().describe('SubjectPublicKeyInfo (RFC 8410), DER, base64'),
    signature: z.string().describe('base64'),
  })
  .describe('Signature of a release');

export const signingKeySchema = z
  .strictObject({
    publicKey: z.string().describe('SubjectPublicKeyInfo (RFC 8410), DER, base64'),
    fingerprint: z.string().describe('SHA-256 of the key, hex'),
    firstUsedAt: z.iso.datetime().describe('Publication of the first release that it signed'),
  })
  .describe('A key that releases are signed with');

export const releaseSummarySchema = z
  .strictObject({
    edition: slug,
    editionName: z.string(),
    revision: z.int(),
    status: z.enum(['published', 'superseded']),
    digest: z.string().describe('SHA-256 of the manifest'),
    publishedAt: z.iso.datetime(),
    erratum: erratumSchema.nullable(),
  })
  .describe('A release in the list');

export type Manifest = z.infer<typeof manifestSchema>;
export type ReleaseSignature = z.infer<typeof releaseSignatureSchema>;
export type SigningKeyResponse = z.infer<typeof signingKeySchema>;
export type ReleaseSummary = z.infer<typeof releaseSummarySchema>;

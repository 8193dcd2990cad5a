/** Who signed a release, and whether the signature fits. Pure. */
import { createPublicKey, verify } from 'node:crypto';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import type { ReleaseSignature } from '../../contract/documents/release-documents.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import type { Difference } from './differences.js';

/** @param bytes of signature.json; null when there is none */
export function signatureFaults(bytes: Uint8Array | null, manifestText: string): Difference[] {
  const fault = (found: string): Difference[] => [
    { file: 'signature.json', where: '', found, expected: 'the publisher’s signature of manifest.json' },
  ];
  if (!bytes) return fault('no such file');
  try {
    const { publicKey, signature, ...rest } = JSON.parse(new TextDecoder().decode(bytes)) as ReleaseSignature;
    if (canonicalJson({ publicKey, signature, ...rest }) !== new TextDecoder().decode(bytes))
      return fault('another form than the canonical one');
    if (canonicalJson(rest) !== canonicalJson({ formatVersion: 1, algorithm: 'Ed25519', signed: 'manifest.json' }))
      return fault('another kind of signature');
    const key = createPublicKey({ key: Buffer.from(publicKey, 'base64'), format: 'der', type: 'spki' });
    const isCanonical = [publicKey, signature].every((text) => Buffer.from(text, 'base64').toString('base64') === text);
    return isCanonical && verify(null, Buffer.from(manifestText), key, Buffer.from(signature, 'base64'))
      ? []
      : fault('a signature that does not fit');
  } catch {
    return fault('what is not a signature');
  }
}

/** SHA-256 of the public key, hex; null of what is no signature. */
export function fingerprintOf(bytes: Uint8Array): string | null {
  try {
    return sha256(Buffer.from((JSON.parse(new TextDecoder().decode(bytes)) as ReleaseSignature).publicKey, 'base64'));
  } catch {
    return null;
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { createPrivateKey, createPublicKey, sign } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { ensureSigningKey, SIGNING_KEY_FILE } from '../platform/start-up/signing-key.js';
import type { ReleaseSignature } from '../contract/documents/release-documents.js';
import { canonicalJson } from '../reckoning/canonical-json.js';

/** The house's key (Ed25519, RFC 8032): it signs the bytes of a manifest, and with them every file that the manifest lists. */
@Injectable()
export class SigningKey {
  constructor(@Inject(CONFIG) private readonly config: Config) {}

  /** Text of signature.json for a manifest; a house without a key gets one. */
  async sign(manifest: string): Promise<string> {
    await ensureSigningKey(this.config.DATA_FOLDER);
    const key = createPrivateKey(await readFile(join(this.config.DATA_FOLDER, SIGNING_KEY_FILE)));
    const publicKey = createPublicKey(key).export({ type: 'spki', format: 'der' });
    const signature: ReleaseSignature = {
      formatVersion: 1,
      algorithm: 'Ed25519',
      signed: 'manifest.json',
      publicKey: publicKey.toString('base64'),
      signature: sign(null, Buffer.from(manifest), key).toString('base64'),
    };
    return canonicalJson(signature);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { createPrivateKey, createPublicKey, sign } from 'node:crypto';
import type { KeyObject } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { AuditReadModel } from '../../audit/audit.read-model.js';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import { ensureSigningKey, SIGNING_KEY_FILE } from '../../platform/start-up/ensure-signing-key.js';
import type { ReleaseSignature } from '../../contract/documents/release-documents.js';
import { canonicalJson } from '../../reckoning/canonical-json.js';
import { ReleasesReadModel } from '../releases.read-model.js';

/** What the audit trail calls a key that took the place of another. */
export const KEY_REPLACED = { action: 'signingKey.replaced', objectType: 'signingKey' } as const;

/**
 * The house's key (Ed25519, RFC 8032): it signs the bytes of a manifest, and with them every file that the manifest lists.
 * A house that has published signs with the key that it signed with before; another takes its place only when somebody said so.
 */
@Injectable()
export class SigningKey {
  constructor(
    private readonly releases: ReleasesReadModel,
    private readonly audit: AuditReadModel,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /**
   * Text of signature.json for a manifest; a house that never published gets a key when it has none.
   * @throws Error when the key of earlier releases is not there, and what to do
   */
  async sign(manifest: string): Promise<string> {
    const fault = await this.fault();
    if (fault !== null) throw new Error(fault);
    await ensureSigningKey(this.config.DATA_FOLDER);
    const key = await this.read();
    if (!key) throw new Error(`${SIGNING_KEY_FILE} in the data folder cannot be read.`);
    const signature: ReleaseSignature = {
      formatVersion: 1,
      algorithm: 'Ed25519',
      signed: 'manifest.json',
      publicKey: publicPartOf(key).toString('base64'),
      signature: sign(null, Buffer.from(manifest), key).toString('base64'),
    };
    return canonicalJson(signature);
  }

  /** Fingerprint (SHA-256, hex) of the key that lies in the data folder; null when there is none. */
  async fingerprint(): Promise<string | null> {
    const key = await this.read();
    return key && sha256(publicPartOf(key));
  }

  /** Why this house cannot sign, and what to do; null when it can. */
  async fault(): Promise<string | null> {
    const last = await this.releases.lastSigned();
    if (!last) return null;
    const { publicKey } = JSON.parse(last.signature) as ReleaseSignature;
    const before = sha256(Buffer.from(publicKey, 'base64'));
    const found = await this.fingerprint();
    if (found === before || (found !== null && (await this.wasTold(found)))) return null;
    return (
      `This house cannot sign: ${last.edition}/${last.revision} was signed by the key ${before.slice(0, 16)}, and ${SIGNING_KEY_FILE} in the data ` +
      `folder ${found === null ? 'is not there' : `is another, ${found.slice(0, 16)}`}. Put it back from a backup. If it is gone for good, ` +
      'run: npm run new-signing-key -- "<why>". Readers then see that another key signs.'
    );
  }

  private async wasTold(objectId: string): Promise<boolean> {
    const { items } = await this.audit.page({ limit: 1, objectType: KEY_REPLACED.objectType, objectId });
    return items.length > 0;
  }

  private async read(): Promise<KeyObject | null> {
    const pem = await readFile(join(this.config.DATA_FOLDER, SIGNING_KEY_FILE)).catch((error: unknown) => {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
      throw error;
    });
    return pem && createPrivateKey(pem);
  }
}

const publicPartOf = (key: KeyObject): Buffer => createPublicKey(key).export({ type: 'spki', format: 'der' });

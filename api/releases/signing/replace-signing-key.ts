import { Inject, Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { Database } from '../../platform/database/database.js';
import { ensureSigningKey } from '../../platform/start-up/ensure-signing-key.js';
import { KEY_REPLACED, SigningKey } from './signing-key.js';

/** Lets another key sign from now on because the one before is lost; a new one is made where none lies. On the audit trail, with the reason. */
@Injectable()
export class ReplaceSigningKey {
  constructor(
    private readonly key: SigningKey,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /**
   * @returns fingerprint of the key that signs from now on
   * @throws Error when the key of earlier releases is there, so that nothing is lost
   */
  async run(reason: string): Promise<string> {
    if ((await this.key.fault()) === null)
      throw new Error('The key of this house is there, and signs. To use another on purpose, move keys/signing-key.pem away first.');
    await ensureSigningKey(this.config.DATA_FOLDER);
    const fingerprint = (await this.key.fingerprint()) ?? '';
    await this.database.transaction((tx) =>
      this.audit.record(tx, { actorId: null, ...KEY_REPLACED, objectId: fingerprint, after: { reason } }),
    );
    return fingerprint;
  }
}

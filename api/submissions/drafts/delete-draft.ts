import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { requireOwn } from '../submission.js';
import { SubmissionsStore } from '../submissions.store.js';

/** Takes an own draft away; its reference is not given again. */
@Injectable()
export class DeleteDraft {
  constructor(
    private readonly store: SubmissionsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, reference: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const draft = requireOwn(actor, await this.store.lock(tx, reference), reference, 'delete');
      requireSameVersion(draft.version, version);
      await this.store.deleteDraft(tx, draft.id);
      await this.audit.record(tx, { actorId: actor.accountId, action: 'draft.deleted', objectType: 'submission', objectId: reference });
    });
  }
}

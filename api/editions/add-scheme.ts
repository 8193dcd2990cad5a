import { Injectable } from '@nestjs/common';
import type { SchemeRequest } from '../contract/endpoints/editions.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { EditionsStore } from './editions.store.js';

/** Puts a scheme on record: which categories count, and how their places become a score. It never changes; a later number stands beside it. */
@Injectable()
export class AddScheme {
  constructor(
    private readonly store: EditionsStore,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, scheme: SchemeRequest): Promise<void> {
    return this.database.transaction(async (tx) => {
      await this.store.createScheme(tx, scheme);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'scheme.added',
        objectType: 'scheme',
        objectId: `${scheme.slug}/${scheme.number}`,
        after: scheme,
      });
    });
  }
}

import { Injectable } from '@nestjs/common';
import type { SuccessionRequest } from '../contract/endpoints/catalogue.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { notOnRecord, unknownReference } from './catalogue-problems.js';
import { CatalogueStore } from './catalogue.store.js';

/** Says what took the place of a maker, a line or a variant: its slug stays as it is, and leads there. */
@Injectable()
export class Succeed {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, request: SuccessionRequest): Promise<void> {
    const { kind, slug, successor } = request;
    return this.database.transaction(async (tx) => {
      if (!(await this.store.lockRow(tx, kind, slug))) throw notOnRecord(kind, slug);
      if (!(await this.store.lockRow(tx, kind, successor))) throw unknownReference('/successor', kind, successor);
      await this.store.succeed(tx, { ...request, byId: actor.accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: `${kind}.succeeded`,
        objectType: kind,
        objectId: slug,
        after: request,
      });
    });
  }
}

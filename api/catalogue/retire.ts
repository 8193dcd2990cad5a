import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { notOnRecord } from './catalogue-problems.js';
import { CatalogueStore } from './catalogue.store.js';
import type { RetirableKind } from './catalogue.store.js';
import { SpoolsStore } from './spools/spools.store.js';

interface Input {
  readonly kind: RetirableKind | 'spool';
  /** Slug; of a spool its blind code. */
  readonly slug: string;
  readonly expectedVersion: number;
  /** Null to take it into use again. */
  readonly reason: string | null;
}

/** Retires a maker, line, variant or spool, so that nothing new is put under it, or takes it into use again; what is there stays readable. */
@Injectable()
export class Retire {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly spools: SpoolsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { kind, slug, expectedVersion, reason }: Input): Promise<void> {
    return this.database.transaction(async (tx) => {
      const row = await (kind === 'spool' ? this.spools.lock(tx, slug) : this.store.lockRow(tx, kind, slug));
      if (!row) throw notOnRecord(kind, slug);
      requireSameVersion(row.version, expectedVersion);
      const retired = { retiredOn: reason === null ? null : this.clock.now(), retiredReason: reason };
      await (kind === 'spool' ? this.spools.change(tx, row.id, retired) : this.store.retire(tx, kind, row.id, retired));
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: reason === null ? `${kind}.takenIntoUse` : `${kind}.retired`,
        objectType: kind,
        objectId: slug,
        ...(reason === null ? {} : { after: { reason } }),
      });
    });
  }
}

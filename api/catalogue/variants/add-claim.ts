import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { notOnRecord, onRecordAlready } from '../catalogue-problems.js';
import { toClaim } from '../catalogue-rows.js';
import type { ClaimRequest, ClaimResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';
import { requireClaim } from './require-claim.js';

interface Input extends ClaimRequest {
  readonly variant: string;
}

/** Puts what a label says on record, as printed and in SI. */
@Injectable()
export class AddClaim {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { variant: slug, quantity, ...words }: Input): Promise<ClaimResponse> {
    const fields = requireClaim(quantity, words, this.clock.now());
    return this.database.transaction(async (tx) => {
      const variant = await this.store.lockVariant(tx, slug);
      if (!variant) throw notOnRecord('variant', slug);
      if (variant.claims.some((claim) => claim.quantity === quantity)) {
        throw onRecordAlready(`A claim of ${quantity} for "${slug}" is on record. Correct that one.`, '/quantity');
      }
      const claim = toClaim(await this.store.createClaim(tx, variant.id, quantity, fields));
      await this.audit.record(tx, { actorId: actor.accountId, action: 'claim.added', objectType: 'variant', objectId: slug, after: claim });
      return claim;
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { WhatRests } from '../what-rests.read-model.js';
import { withFormer } from '../with-former.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notOnRecord } from '../catalogue-problems.js';
import { toClaim, toVariant } from '../catalogue-rows.js';
import type { ClaimCorrection, VariantResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';
import { CLAIMED_QUANTITIES } from '../../contract/claims.js';
import { requireClaim } from './require-claim.js';

interface Input {
  readonly variant: string;
  readonly quantity: string;
  readonly expectedVersion: number;
  readonly correction: ClaimCorrection;
}

/** Corrects a claim that was copied wrongly from the label; once something rests on it, with a reason, and what stood there is kept beside it. */
@Injectable()
export class CorrectClaim {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly rests: WhatRests,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { variant: slug, quantity: asked, expectedVersion, correction }: Input): Promise<VariantResponse> {
    const quantity = CLAIMED_QUANTITIES.find((known) => known === asked);
    if (!quantity) throw notOnRecord('claim', asked);
    const { reason, ...words } = correction;
    const fields = requireClaim(quantity, words, this.clock.now());
    return this.database.transaction(async (tx) => {
      const variant = await this.store.lockVariant(tx, slug);
      const claim = variant?.claims.find((one) => one.quantity === quantity);
      if (!variant || !claim) throw notOnRecord('claim', `${slug}, ${quantity}`);
      requireSameVersion(variant.version, expectedVersion);
      await this.superseded.keep(
        tx,
        { kind: 'claim', objectId: claim.id, was: toClaim(claim), reason, byId: actor.accountId },
        await this.rests.on({ variant: variant.id }, tx),
      );
      const after = toVariant(await this.store.correctClaim(tx, variant.id, quantity, fields));
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'claim.corrected',
        objectType: 'variant',
        objectId: slug,
        before: toClaim(claim),
        after: { quantity, ...words },
      });
      return withFormer(after, await this.superseded.of([variant.id, ...variant.claims.map(({ id }) => id)], tx));
    });
  }
}

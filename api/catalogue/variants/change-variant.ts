import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { WhatRests } from '../what-rests.read-model.js';
import { withFormer } from '../with-former.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notOnRecord, onRecordAlready } from '../catalogue-problems.js';
import { toVariant } from '../catalogue-rows.js';
import type { VariantChange, VariantResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';

interface Input {
  readonly slug: string;
  readonly expectedVersion: number;
  readonly change: VariantChange;
}

/** Corrects the size or colour of a variant; its slug and its line stay. Once something rests on it, with a reason, the old words beside it. */
@Injectable()
export class ChangeVariant {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly rests: WhatRests,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { slug, expectedVersion, change }: Input): Promise<VariantResponse> {
    return this.database.transaction(async (tx) => {
      const row = await this.store.lockVariant(tx, slug);
      if (!row) throw notOnRecord('variant', slug);
      requireSameVersion(row.version, expectedVersion);
      const size = change.size ?? row.size;
      const colour = change.colour ?? row.colour;
      const twin = await this.store.variantOf(tx, row.lineId, size, colour);
      if (twin && twin.id !== row.id)
        throw onRecordAlready(
          `The line in ${size}, ${colour} is on record as "${twin.slug}". Use that one, or correct the size or colour.`,
          '/size',
        );
      const before = toVariant(row);
      await this.superseded.keep(
        tx,
        { kind: 'variant', objectId: row.id, was: { size: row.size, colour: row.colour }, reason: change.reason, byId: actor.accountId },
        await this.rests.on({ variant: row.id }, tx),
      );
      const after = toVariant(await this.store.changeVariant(tx, row.id, { size, colour }));
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'variant.changed',
        objectType: 'variant',
        objectId: slug,
        before,
        after,
      });
      return withFormer(after, await this.superseded.of([row.id, ...row.claims.map(({ id }) => id)], tx));
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { WhatRests } from '../what-rests.read-model.js';
import { withFormer } from '../with-former.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notOnRecord, requireDistinct } from '../catalogue-problems.js';
import { toMaker } from '../catalogue-rows.js';
import type { MakerChange, MakerResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';

interface Input extends MakerChange {
  readonly slug: string;
  readonly expectedVersion: number;
}

/** Renames a maker; its slug stays, and so do the names in releases. Once something rests on it, with a reason, the old name beside it. */
@Injectable()
export class ChangeMaker {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly rests: WhatRests,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { slug, expectedVersion, name, reason }: Input): Promise<MakerResponse> {
    return this.database.transaction(async (tx) => {
      const before = await this.store.lockMaker(tx, slug);
      if (!before) throw notOnRecord('maker', slug);
      requireSameVersion(before.version, expectedVersion);
      requireDistinct(name, await this.store.makerNames(tx, slug));
      const { id: objectId } = before;
      const kept = { kind: 'maker', objectId, was: { name: before.name }, reason, byId: actor.accountId };
      await this.superseded.keep(tx, kept, await this.rests.on({ maker: objectId }, tx));
      const after = toMaker(await this.store.changeMaker(tx, before.id, name));
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'maker.changed',
        objectType: 'maker',
        objectId: slug,
        before: toMaker(before),
        after,
      });
      return withFormer(after, await this.superseded.of([objectId], tx));
    });
  }
}

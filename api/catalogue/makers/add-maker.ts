import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { onRecordAlready, requireDistinct } from '../catalogue-problems.js';
import { toMaker } from '../catalogue-rows.js';
import type { MakerRequest, MakerResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';

/** Puts a maker on record. */
@Injectable()
export class AddMaker {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, input: MakerRequest): Promise<MakerResponse> {
    return this.database.transaction(async (tx) => {
      if (await this.store.lockMaker(tx, input.slug))
        throw onRecordAlready(`A maker with the slug "${input.slug}" is on record. Choose another slug.`, '/slug');
      requireDistinct(input.name, await this.store.makerNames(tx));
      const maker = await this.store.createMaker(tx, input);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'maker.added',
        objectType: 'maker',
        objectId: maker.slug,
        after: input,
      });
      return toMaker(maker);
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { notValid } from '../../platform/http/validation.js';
import { onRecordAlready, requireDistinct, requireInUse, unknownReference } from '../catalogue-problems.js';
import { toLine } from '../catalogue-rows.js';
import type { LineRequest, LineResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';
import { carriersFaults } from './line.js';

/** Puts a line of a maker on record. */
@Injectable()
export class AddLine {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, input: LineRequest): Promise<LineResponse> {
    const faults = carriersFaults(input.construction, input.carriers);
    if (faults.length > 0) throw notValid(faults);
    return this.database.transaction(async (tx) => {
      const { maker: makerSlug, ...fields } = input;
      const maker = await this.store.lockMaker(tx, makerSlug);
      if (!maker) throw unknownReference('/maker', 'maker', makerSlug);
      requireInUse('/maker', maker);
      if (await this.store.lockLine(tx, input.slug))
        throw onRecordAlready(`A line with the slug "${input.slug}" is on record. Choose another slug.`, '/slug');
      requireDistinct(input.name, await this.store.lineNames(tx));
      const line = await this.store.createLine(tx, { ...fields, makerId: maker.id });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'line.added',
        objectType: 'line',
        objectId: line.slug,
        after: input,
      });
      return toLine(line);
    });
  }
}

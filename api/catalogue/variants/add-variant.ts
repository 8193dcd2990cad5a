import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { onRecordAlready, requireInUse, unknownReference } from '../catalogue-problems.js';
import { toVariant } from '../catalogue-rows.js';
import type { VariantRequest, VariantResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';

/** Puts a line in one size and colour on record: the thing that is ranked. */
@Injectable()
export class AddVariant {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, input: VariantRequest): Promise<VariantResponse> {
    const { slug, line: lineSlug, size, colour } = input;
    return this.database.transaction(async (tx) => {
      const line = await this.store.lockLine(tx, lineSlug);
      if (!line) throw unknownReference('/line', 'line', lineSlug);
      requireInUse('/line', line, line.maker);
      if (await this.store.lockVariant(tx, slug))
        throw onRecordAlready(`A variant with the slug "${slug}" is on record. Choose another slug.`, '/slug');
      const twin = await this.store.variantOf(tx, line.id, size, colour);
      if (twin)
        throw onRecordAlready(
          `The line "${lineSlug}" in ${size}, ${colour} is on record as "${twin.slug}". Use that one, or correct the size or colour.`,
          '/size',
        );
      const variant = await this.store.createVariant(tx, { slug, lineId: line.id, size, colour });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'variant.added',
        objectType: 'variant',
        objectId: slug,
        after: input,
      });
      return toVariant(variant);
    });
  }
}

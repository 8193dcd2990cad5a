import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { notValid } from '../../platform/http/validation.js';
import { Identifiers } from '../../platform/identifiers/identifiers.js';
import { drawBlindCode } from '../../contract/blind-code.js';
import { requireInUse, unknownReference } from '../catalogue-problems.js';
import { CatalogueStore } from '../catalogue.store.js';
import { futureFaults } from '../../platform/clock/future-faults.js';
import type { SpoolRequest } from '../../contract/endpoints/spools.js';
import { SpoolsStore } from './spools.store.js';

/** Puts a spool on the shelf under a new blind code, and gives the code. */
@Injectable()
export class AddSpool {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueStore,
    private readonly spools: SpoolsStore,
    private readonly identifiers: Identifiers,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, input: SpoolRequest): Promise<string> {
    const faults = futureFaults('/obtainedOn', input.obtainedOn, this.clock.now());
    if (faults.length > 0) throw notValid(faults);
    return this.database.transaction(async (tx) => {
      const { variant: slug, obtainedOn, ...fields } = input;
      const variant = await this.catalogue.lockVariant(tx, slug);
      if (!variant) throw unknownReference('/variant', 'variant', slug);
      requireInUse('/variant', variant, variant.line, variant.line.maker);
      const blindCode = await this.freeCode(tx);
      await this.spools.create(tx, { ...fields, blindCode, variantId: variant.id, obtainedOn: new Date(obtainedOn) });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'spool.added',
        objectType: 'spool',
        objectId: blindCode,
        after: input,
      });
      return blindCode;
    });
  }

  private async freeCode(tx: Transaction): Promise<string> {
    for (;;) {
      const code = drawBlindCode((limit) => this.identifiers.below(limit));
      if (!(await this.spools.isTaken(tx, code))) return code;
    }
  }
}

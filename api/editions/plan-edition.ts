import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { EditionParts } from './edition-parts.read-model.js';
import type { EditionRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';

/** Plans an edition: a scheme or divisions that each have one, dates, the edition before, and the method versions to pin. */
@Injectable()
export class PlanEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly parts: EditionParts,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, input: EditionRequest): Promise<void> {
    const { slug, name, previous, methods, opensOn, closesOn } = input;
    const divisions = (await this.parts.divisions(input)) ?? [];
    await this.parts.requireCountable(input);
    const versionIds = await this.parts.versionIds(methods);
    const previousId = await this.parts.previousId(previous);
    await this.database.transaction(async (tx) => {
      const data = {
        slug,
        name,
        state: 'planned',
        opensOn: new Date(opensOn),
        closesOn: new Date(closesOn),
        previousId,
      };
      await this.store.createEdition(tx, data, divisions, versionIds);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.planned',
        objectType: 'edition',
        objectId: input.slug,
        after: input,
      });
    });
  }
}

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireState } from './edition.js';
import { EditionParts } from './edition-parts.read-model.js';
import type { EntriesRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';

/** Enters variants in an edition that is planned. */
@Injectable()
export class AddEntries {
  constructor(
    private readonly store: EditionsStore,
    private readonly parts: EditionParts,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, { variants }: EntriesRequest): Promise<void> {
    const ids = await this.parts.variantIds(variants);
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lock(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      requireState(edition, ['planned'], 'An open one takes a further entry with a reason: POST /v1/editions/{edition}/amendments.');
      await this.store.addEntries(tx, edition.id, ids);
      await this.store.touch(tx, edition.id);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.entriesAdded',
        objectType: 'edition',
        objectId: slug,
        after: { variants },
      });
    });
  }
}

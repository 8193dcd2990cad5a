import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireState } from './edition.js';
import { editionProblems } from './editions.errors.js';
import type { EntriesRequest } from '../contract/endpoints/editions.js';
import { EditionsStore } from './editions.store.js';

/** Enters variants in an edition that is not closed yet. */
@Injectable()
export class AddEntries {
  constructor(
    private readonly store: EditionsStore,
    private readonly catalogue: CatalogueReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, { variants }: EntriesRequest): Promise<void> {
    const found = await Promise.all(variants.map(async (name) => ({ name, variant: await this.catalogue.variantBySlug(name) })));
    const missing = found.filter(({ variant }) => variant === null).map(({ name }) => name);
    if (missing.length > 0)
      throw new Problem(editionProblems['editions/unknown-reference'], `Not in the catalogue: ${missing.join(', ')}.`);
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lock(tx, slug);
      if (!edition) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
      requireState(edition, ['planned', 'open']);
      await this.store.addEntries(
        tx,
        edition.id,
        found.flatMap(({ variant }) => (variant ? [variant.id] : [])),
      );
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

import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { EditionChange } from '../contract/endpoints/editions.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { EditionParts } from './edition-parts.read-model.js';
import { editionProblems } from './editions.errors.js';
import { EditionsReadModel } from './editions.read-model.js';
import { EditionsStore } from './editions.store.js';

/** Changes a planned edition, takes an entry out of it, or takes it away; nothing rests on it until it opens. */
@Injectable()
export class ChangeEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly editions: EditionsReadModel,
    private readonly parts: EditionParts,
    private readonly catalogue: CatalogueReadModel,
    private readonly database: Database,
    private readonly audit: AuditTrail,
  ) {}

  async run(actor: Actor, slug: string, version: number, change: EditionChange): Promise<void> {
    const { previous, methods, opensOn, closesOn, name } = change;
    const divisions = await this.parts.divisions(change);
    const previousId = previous === undefined ? undefined : await this.parts.previousId(previous, slug);
    const versionIds = methods && (await this.parts.versionIds(methods));
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['planned'], AMEND);
      const days = { opensOn: opensOn ? new Date(opensOn) : edition.opensOn, closesOn: closesOn ? new Date(closesOn) : edition.closesOn };
      if (days.closesOn < days.opensOn) {
        const detail = 'The edition closes before it opens; expected a closing day on or after the opening day.';
        throw notValid([{ pointer: closesOn ? '/closesOn' : '/opensOn', detail, code: 'ends_before_it_starts' }]);
      }
      const [before] = await this.editions.editions(slug);
      if (divisions) await this.store.divideInstead(tx, edition.id, divisions);
      if (versionIds) await this.store.pinInstead(tx, edition.id, versionIds);
      await this.store.touch(tx, edition.id, {
        ...days,
        ...(name === undefined ? {} : { name }),
        ...(previousId === undefined ? {} : { previousId }),
      });
      await this.record(tx, actor, 'edition.changed', slug, before, change);
    });
  }

  async removeEntry(actor: Actor, slug: string, version: number, variant: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['planned'], EXCLUDE);
      const entered = await this.catalogue.variantBySlug(variant);
      const entry = entered && (await this.store.findEntry(tx, edition.id, entered.id));
      if (!entry) throw new Problem(platformProblems['request/not-found'], `Edition ${slug} has no entry ${variant}.`);
      await this.store.removeEntry(tx, entry.id);
      await this.store.touch(tx, edition.id);
      await this.record(tx, actor, 'edition.entryRemoved', slug, { variant });
    });
  }

  async delete(actor: Actor, slug: string, version: number): Promise<void> {
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['planned']);
      const next = await this.editions.following(slug);
      if (next.length > 0) throw new Problem(editionProblems['editions/precedes-another'], `${next.join(', ')} follows ${slug}.`);
      const [before] = await this.editions.editions(slug);
      await this.store.delete(tx, edition.id);
      await this.record(tx, actor, 'edition.deleted', slug, before);
    });
  }

  private record(
    tx: Parameters<AuditTrail['record']>[0],
    actor: Actor,
    action: string,
    objectId: string,
    before?: object,
    after?: object,
  ): Promise<void> {
    const changes = { ...(before ? { before } : {}), ...(after ? { after } : {}) };
    return this.audit.record(tx, { actorId: actor.accountId, action, objectType: 'edition', objectId, ...changes });
  }
}

const AMEND = 'An open one takes further entries, forgotten methods and a later closing day: POST /v1/editions/{edition}/amendments.';
const EXCLUDE = 'An entry of an open one is left out with a reason: POST /v1/editions/{edition}/exclusions.';

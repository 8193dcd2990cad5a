import { Injectable } from '@nestjs/common';
import { InterestsReadModel } from '../interests/interests.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireState } from './edition.js';
import type { EditionState } from './edition.js';
import { editionProblems } from './editions.errors.js';
import { EditionsStore } from './editions.store.js';

/** The entry that an editor decides on, which nobody does who is tied to its maker. */
@Injectable()
export class EntryToChange {
  constructor(
    private readonly store: EditionsStore,
    private readonly interests: InterestsReadModel,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  /** Locks its edition, which has changed by this. @throws Problem where there is none, its state does not allow it, or the actor has an interest */
  async lock(tx: Transaction, actor: Actor, slug: string, variant: string, allowed: readonly EditionState[]) {
    const edition = await this.store.lock(tx, slug);
    const entered = await this.catalogue.variantBySlug(variant);
    const entry = edition && entered && (await this.store.findEntry(tx, edition.id, entered.id));
    if (!entry) throw new Problem(platformProblems['request/not-found'], `Edition ${slug} has no entry ${variant}.`);
    requireState(edition, allowed);
    if (await this.interests.has(actor.accountId, entered.makerId)) throw new Problem(editionProblems['editions/interest']);
    await this.store.touch(tx, edition.id);
    return { ...entry, divisions: edition.divisions };
  }
}

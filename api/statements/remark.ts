import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { RemarkRequest } from '../contract/endpoints/statements.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { StatementsStore } from './statements.store.js';
import type { NewRemark } from './statements.store.js';

/** Writes a caveat, or enters the reply of a maker. */
@Injectable()
export class Remark {
  constructor(
    private readonly database: Database,
    private readonly store: StatementsStore,
    private readonly accounts: AccountsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly editions: EditionsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(actor: Actor, request: RemarkRequest): Promise<string> {
    const subject = request.kind === 'caveat' ? await this.subjectOf(request.about) : await this.answered(request);
    const signedBy =
      request.kind === 'caveat' ? (await this.accounts.displayNames([actor.accountId])).of(actor.accountId) : request.signedBy;
    const said = { kind: request.kind, words: request.words, signedBy, byId: actor.accountId, at: this.clock.now() };
    return this.database.transaction(async (tx) => {
      const id = await this.store.remark(tx, { ...NOTHING, ...said, ...subject });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: `${request.kind}.added`,
        objectType: 'remark',
        objectId: id,
        after: request,
      });
      return id;
    });
  }

  private async subjectOf(about: Extract<RemarkRequest, { kind: 'caveat' }>['about']): Promise<Partial<NewRemark>> {
    if (about.kind === 'construction') return { construction: about.slug };
    const found = await (about.kind === 'line' ? this.catalogue.lineId(about.slug) : this.catalogue.variantBySlug(about.slug));
    if (found === null) throw unknown('/about/slug', about.kind, about.slug);
    return about.kind === 'line' ? { lineSlug: about.slug } : { variantSlug: about.slug };
  }

  private async answered({ variant, edition, category }: Extract<RemarkRequest, { kind: 'reply' }>): Promise<Partial<NewRemark>> {
    const [named, entries] = [await this.catalogue.variantBySlug(variant), await this.editions.entriesOf(edition)];
    if (named === null || !entries.includes(named.id)) throw unknown('/variant', `entry of ${edition}`, variant);
    const categories = await this.editions.categoriesOf(edition);
    if (category !== null && !categories.includes(category))
      throw unknown('/category', `category of ${edition} (${categories.join(', ')})`, category);
    return { variantSlug: variant, editionSlug: edition, category };
  }
}

const NOTHING = { construction: null, lineSlug: null, variantSlug: null, editionSlug: null, category: null, supersedesId: null };

const unknown = (pointer: string, what: string, found: string) =>
  notValid([{ pointer, code: 'unknown', detail: `Found "${found}", which is no ${what}. Look it up and name one that is.` }]);

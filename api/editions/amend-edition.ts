import { Injectable } from '@nestjs/common';
import type { Amendment } from '../contract/amendment.js';
import type { AmendmentRequest } from '../contract/endpoints/editions.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { InputFault } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { EditionParts } from './edition-parts.read-model.js';
import { EditionsStore } from './editions.store.js';

/** Lets an open edition take what was forgotten, with the reason: further entries, methods, a later closing day. Readers see it. */
@Injectable()
export class AmendEdition {
  constructor(
    private readonly store: EditionsStore,
    private readonly parts: EditionParts,
    private readonly database: Database,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  async run(
    actor: Actor,
    slug: string,
    version: number,
    { reason, variants = [], methods = [], closesOn }: AmendmentRequest,
  ): Promise<void> {
    const variantIds = await this.parts.variantIds(variants);
    const versionIds = await this.parts.versionIds(methods);
    await this.database.transaction(async (tx) => {
      const edition = await this.store.lockIn(tx, slug, version, ['open']);
      const day = edition.closesOn.toISOString().slice(0, 10);
      const pinned = await this.parts.methodsOf(edition.methods.map(({ methodVersionId }) => methodVersionId));
      const faults = [...notLater(closesOn, day), ...pinnedAlready(methods, pinned)];
      if (faults.length > 0) throw notValid(faults);
      const changes: AmendedParts = { variants, methods, closesOn: closesOn === undefined ? null : { before: day, after: closesOn } };
      await this.store.amend(tx, { editionId: edition.id, reason, changes, byId: actor.accountId, at: this.clock.now() });
      await this.store.addEntries(tx, edition.id, variantIds);
      await this.store.pin(tx, edition.id, versionIds);
      await this.store.touch(tx, edition.id, closesOn === undefined ? {} : { closesOn: new Date(closesOn) });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'edition.amended',
        objectType: 'edition',
        objectId: slug,
        after: { reason, ...changes },
      });
    });
  }
}

export type AmendedParts = Omit<Amendment, 'on' | 'reason'>;

const notLater = (closesOn: string | undefined, planned: string): InputFault[] =>
  closesOn === undefined || closesOn > planned
    ? []
    : [
        {
          pointer: '/closesOn',
          code: 'not_later',
          detail: `Found ${closesOn}; an open edition closes on ${planned} and can only close later. To end it sooner, close it: POST /v1/editions/{edition}/closure.`,
        },
      ];

const pinnedAlready = (methods: readonly { readonly slug: string }[], pinned: readonly string[]): InputFault[] =>
  methods.flatMap(({ slug }, index) => {
    const isDouble = methods.findIndex((other) => other.slug === slug) < index;
    if (!pinned.includes(slug) && !isDouble) return [];
    const detail = `A version of ${slug} is pinned already and stays: what was measured by it would not compare. Name a method that was forgotten.`;
    return [{ pointer: `/methods/${index}/slug`, code: 'pinned_already', detail }];
  });

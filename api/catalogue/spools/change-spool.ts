import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { futureFaults } from '../../platform/clock/future-faults.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notValid } from '../../platform/http/validation.js';
import { normaliseBlindCode } from '../../contract/blind-code.js';
import type { SpoolChange } from '../../contract/endpoints/spools.js';
import type { Resting } from '../../contract/former.js';
import { requireInUse, unknownReference } from '../catalogue-problems.js';
import { CatalogueStore } from '../catalogue.store.js';
import { SpoolsStore } from './spools.store.js';
import { WhatRests } from '../what-rests.read-model.js';

interface Input {
  readonly code: string;
  readonly expectedVersion: number;
  readonly change: SpoolChange;
}

/**
 * Corrects a spool that was entered wrongly; its code stays. Once something rests on it, with a reason, and what it said is kept beside it.
 * What it is changes here while nothing rests on it and no sealed key names it; later by a re-identification of two persons.
 */
@Injectable()
export class ChangeSpool {
  constructor(
    private readonly database: Database,
    private readonly catalogue: CatalogueStore,
    private readonly spools: SpoolsStore,
    private readonly rests: WhatRests,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { code, expectedVersion, change }: Input): Promise<void> {
    const { reason, variant: slug, obtainedOn, ...fields } = change;
    const faults = obtainedOn === undefined ? [] : futureFaults('/obtainedOn', obtainedOn, this.clock.now());
    if (faults.length > 0) throw notValid(faults);
    const blindCode = normaliseBlindCode(code);
    return this.database.transaction(async (tx) => {
      const spool = await this.spools.lock(tx, code);
      requireSameVersion(spool.version, expectedVersion);
      const resting = await this.rests.on({ spool: spool.id }, tx);
      const isMoved = slug !== undefined && slug !== spool.variant.slug;
      const variantId = isMoved ? await this.otherVariant(tx, blindCode, slug, resting) : spool.variantId;
      const was = {
        variant: spool.variant.slug,
        source: spool.source,
        obtainedOn: spool.obtainedOn.toISOString().slice(0, 10),
        place: spool.place,
        lot: spool.lot,
        lengthM: spool.lengthM?.toFixed() ?? null,
      };
      await this.superseded.keep(tx, { kind: 'spool', objectId: spool.id, was, reason, byId: actor.accountId }, resting);
      const days = obtainedOn === undefined ? {} : { obtainedOn: new Date(obtainedOn) };
      await this.spools.change(tx, spool.id, { ...given(fields), ...days, variantId });
      const { reason: _, ...after } = change;
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'spool.changed',
        objectType: 'spool',
        objectId: blindCode,
        before: was,
        after,
      });
    });
  }

  private async otherVariant(tx: Transaction, blindCode: string, slug: string, { submissions }: Resting): Promise<string> {
    if (submissions.length > 0 || (await this.spools.isSealed(tx, blindCode))) {
      const what = submissions.length > 0 ? `${submissions.length} submissions rest on it` : 'The sealed key of an edition names it';
      const detail = `${what}. Propose a re-identification, which another editor carries out: POST /v1/proposals.`;
      throw notValid([{ pointer: '/variant', detail, code: 'needs_reidentification' }]);
    }
    const variant = await this.catalogue.lockVariant(tx, slug);
    if (!variant) throw unknownReference('/variant', 'variant', slug);
    requireInUse('/variant', variant, variant.line, variant.line.maker);
    return variant.id;
  }
}

type Given = Pick<SpoolChange, 'source' | 'place' | 'lot' | 'lengthM'>;

/** The fields that were sent, without those that were not. */
const given = (fields: Given) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [Field in keyof Given]?: Exclude<Given[Field], undefined>;
  };

import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { SupersededRows } from '../../audit/superseded.store.js';
import { WhatRests } from '../what-rests.read-model.js';
import { withFormer } from '../with-former.js';
import { Database } from '../../platform/database/database.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/headers/if-match.js';
import { notValid } from '../../platform/http/validation.js';
import { notOnRecord, requireDistinct } from '../catalogue-problems.js';
import { toLine } from '../catalogue-rows.js';
import type { LineChange, LineResponse } from '../../contract/endpoints/catalogue.js';
import { CatalogueStore } from '../catalogue.store.js';
import { carriersFaults } from './line.js';

interface Input {
  readonly slug: string;
  readonly expectedVersion: number;
  readonly change: LineChange;
}

/** Corrects a line; its slug and its maker stay. Once something rests on it, with a reason, and what it said is kept beside it. */
@Injectable()
export class ChangeLine {
  constructor(
    private readonly database: Database,
    private readonly store: CatalogueStore,
    private readonly rests: WhatRests,
    private readonly superseded: SupersededRows,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { slug, expectedVersion, change }: Input): Promise<LineResponse> {
    const { reason, ...changes } = change;
    return this.database.transaction(async (tx) => {
      const row = await this.store.lockLine(tx, slug);
      if (!row) throw notOnRecord('line', slug);
      requireSameVersion(row.version, expectedVersion);
      const before = toLine(row);
      const fields = changed(before, changes);
      const faults = carriersFaults(fields.construction, fields.carriers);
      if (faults.length > 0) throw notValid(faults);
      requireDistinct(fields.name, await this.store.lineNames(tx, slug));
      const was = changed(before, {});
      await this.superseded.keep(
        tx,
        { kind: 'line', objectId: row.id, was, reason, byId: actor.accountId },
        await this.rests.on({ line: row.id }, tx),
      );
      const after = toLine(await this.store.changeLine(tx, row.id, fields));
      await this.audit.record(tx, { actorId: actor.accountId, action: 'line.changed', objectType: 'line', objectId: slug, before, after });
      return withFormer(after, await this.superseded.of([row.id], tx));
    });
  }
}

const changed = (before: LineResponse, change: LineChange) => ({
  name: change.name ?? before.name,
  material: change.material ?? before.material,
  construction: change.construction ?? before.construction,
  carriers: change.carriers === undefined ? before.carriers : change.carriers,
  densityGPerCm3: change.densityGPerCm3 ?? before.densityGPerCm3,
});

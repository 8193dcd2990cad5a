import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { notValid } from '../platform/http/validation.js';
import { checkSettingFaults } from '../checks/check-settings.js';
import { successionFaults } from './method-version.js';
import type { MethodVersionRequest } from '../contract/endpoints/methods.js';
import { MethodsStore } from './methods.store.js';

interface Input {
  readonly slug: string;
  readonly version: MethodVersionRequest;
}

/** Adds the next wording of a method. It is never changed after; the one before ends where this one begins. */
@Injectable()
export class AddMethodVersion {
  constructor(
    private readonly database: Database,
    private readonly store: MethodsStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, { slug, version }: Input): Promise<void> {
    return this.database.transaction(async (tx) => {
      const method = await this.store.lock(tx, slug);
      if (!method) throw new Problem(platformProblems['request/not-found'], `No method "${slug}" is on record.`);
      const used = await this.store.lastBenchDay(tx, method.id);
      const faults = [...successionFaults(method.versions.at(-1), version, used), ...checkSettingFaults(version.checks)];
      if (faults.length > 0) throw notValid(faults);
      await this.store.addVersion(tx, method.id, version);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'methodVersion.added',
        objectType: 'method',
        objectId: `${slug}/${version.number}`,
        after: version,
      });
    });
  }
}

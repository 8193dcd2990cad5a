import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import type { MethodRequest } from '../contract/endpoints/methods.js';
import { MethodsStore } from './methods.store.js';

/** Puts a method on record, still without a wording. */
@Injectable()
export class AddMethod {
  constructor(
    private readonly database: Database,
    private readonly store: MethodsStore,
    private readonly audit: AuditTrail,
  ) {}

  run(actor: Actor, input: MethodRequest): Promise<void> {
    return this.database.transaction(async (tx) => {
      if (await this.store.lock(tx, input.slug)) {
        const detail = `A method with the slug "${input.slug}" is on record. Add a version to it, or choose another slug.`;
        throw new Problem(platformProblems['record/already-exists'], detail, [{ pointer: '/slug', detail, code: 'duplicate' }]);
      }
      await this.store.create(tx, input);
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'method.added',
        objectType: 'method',
        objectId: input.slug,
        after: input,
      });
    });
  }
}

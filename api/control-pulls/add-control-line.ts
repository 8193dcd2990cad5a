import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import type { ControlLineRequest } from '../contract/endpoints/control-pulls.js';
import { ControlPullsStore } from './control-pulls.store.js';

/** Puts a control line on record; it never changes, another lot is another one. */
@Injectable()
export class AddControlLine {
  constructor(
    private readonly database: Database,
    private readonly store: ControlPullsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, line: ControlLineRequest): Promise<void> {
    return this.database.transaction(async (tx) => {
      if (await this.store.controlLine(tx, line.code)) {
        const detail = `A control line with the code "${line.code}" is on record and never changes. Give the new lot a code of its own.`;
        throw new Problem(platformProblems['record/already-exists'], detail, [{ pointer: '/code', detail, code: 'duplicate' }]);
      }
      await this.store.addControlLine(tx, line, this.clock.now());
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'controlLine.added',
        objectType: 'controlLine',
        objectId: line.code,
        after: line,
      });
    });
  }
}

import { Injectable } from '@nestjs/common';
import type { HouseStatementRequest } from '../contract/endpoints/statements.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import { StatementsStore } from './statements.store.js';

/** Says who publishes, from now on. */
@Injectable()
export class StateHouse {
  constructor(
    private readonly database: Database,
    private readonly store: StatementsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run({ accountId }: Actor, statement: HouseStatementRequest): Promise<void> {
    return this.database.transaction(async (tx) => {
      const number = await this.store.state(tx, { ...statement, byId: accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: accountId,
        action: 'house.stated',
        objectType: 'houseStatement',
        objectId: String(number),
        after: statement,
      });
    });
  }
}

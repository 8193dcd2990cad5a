import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { statementProblems } from './statements.errors.js';
import { StatementsStore } from './statements.store.js';

/** Ends a remark with the reason, or puts another in its place. */
@Injectable()
export class EndRemark {
  constructor(
    private readonly database: Database,
    private readonly store: StatementsStore,
    private readonly accounts: AccountsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, id: string, reason: string): Promise<void> {
    return this.database.transaction(async (tx) => {
      await this.end(tx, actor, id, reason, 'ended');
    });
  }

  /** @returns id of the successor */
  async supersede(actor: Actor, id: string, { words, reason }: { readonly words: string; readonly reason: string }): Promise<string> {
    const name = (await this.accounts.displayNames([actor.accountId])).of(actor.accountId);
    return this.database.transaction(async (tx) => {
      const { end: _, id: __, ...former } = await this.end(tx, actor, id, reason, 'superseded');
      const signedBy = former.kind === 'caveat' ? name : former.signedBy;
      return this.store.remark(tx, {
        ...former,
        words,
        signedBy,
        byId: actor.accountId,
        at: this.clock.now(),
        supersedesId: id,
      });
    });
  }

  private async end(tx: Transaction, actor: Actor, id: string, reason: string, how: 'ended' | 'superseded') {
    const remark = await this.store.lock(tx, id);
    if (!remark) throw new Problem(platformProblems['request/not-found'], `No remark has the id ${id}.`);
    if (remark.end) throw new Problem(statementProblems['statements/ended'], `It ended already: ${remark.end.reason}`);
    await this.store.end(tx, id, { reason, byId: actor.accountId, at: this.clock.now() });
    await this.audit.record(tx, {
      actorId: actor.accountId,
      action: `${remark.kind}.${how}`,
      objectType: 'remark',
      objectId: id,
      after: { reason },
    });
    return remark;
  }
}

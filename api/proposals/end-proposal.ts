import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { proposalProblems } from './proposals.errors.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import { ProposalsStore } from './proposals.store.js';

/** Ends an open proposal, with the reason: another person declines it, its own person calls it off. */
@Injectable()
export class EndProposal {
  constructor(
    private readonly database: Database,
    private readonly store: ProposalsStore,
    private readonly proposals: ProposalsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, id: string, kind: 'declined' | 'calledOff', reason: string): Promise<void> {
    return this.database.transaction(async (tx) => {
      await this.store.lock(tx, id);
      const proposal = await this.proposals.toEnd(tx, id);
      if (!proposal) throw new Problem(platformProblems['request/not-found'], `No proposal has the id ${id}.`);
      const isOwn = proposal.byId === actor.accountId;
      if (kind === 'declined' && isOwn)
        throw new Problem(proposalProblems['proposals/own-proposal'], 'Call it off instead of declining it.');
      if (kind === 'calledOff' && !isOwn) throw new Problem(proposalProblems['proposals/not-yours']);
      if (!proposal.isOpen) throw new Problem(proposalProblems['proposals/ended'], `It is ${proposal.says} already.`);
      await this.store.end(tx, { proposalId: id, kind, reason, byId: actor.accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: `${proposal.kind}.${kind}`,
        objectType: proposal.kind === 'withdrawal' ? 'submission' : 'spool',
        objectId: proposal.object,
        after: { proposal: id, reason },
      });
    });
  }
}

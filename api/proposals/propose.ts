import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import type { ProposalRequest } from '../contract/endpoints/proposals.js';
import { ProposalsStore } from './proposals.store.js';

/** Proposes what another person is to carry out; whether it can be is seen then. */
@Injectable()
export class Propose {
  constructor(
    private readonly database: Database,
    private readonly store: ProposalsStore,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** @returns the id of the proposal */
  run(actor: Actor, proposal: ProposalRequest): Promise<string> {
    const { kind, reason } = proposal;
    const about =
      proposal.kind === 'withdrawal'
        ? { object: proposal.submission, variant: null }
        : { object: proposal.spool.trim().toUpperCase(), variant: proposal.variant };
    return this.database.transaction(async (tx) => {
      const id = await this.store.add(tx, { kind, reason, ...about, byId: actor.accountId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: `${kind}.proposed`,
        objectType: kind === 'withdrawal' ? 'submission' : 'spool',
        objectId: about.object,
        after: { proposal: id, ...about, reason },
      });
      return id;
    });
  }
}

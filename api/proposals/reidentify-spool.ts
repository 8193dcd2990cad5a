import { Injectable } from '@nestjs/common';
import { SpoolsStore } from '../catalogue/spools/spools.store.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { requireSameVersion } from '../platform/http/headers/if-match.js';
import { SubmissionPointers } from '../submissions/submission-pointers.read-model.js';
import { proposalProblems } from './proposals.errors.js';
import { ProposalsReadModel } from './proposals.read-model.js';

interface Input {
  /** Id of the proposal of another person. */
  readonly proposal: string;
  readonly code: string;
  readonly expectedVersion: number;
}

/** Says on record, as another person proposed, that a spool is another variant than was thought; what was published before stays, a new release tells the change. */
@Injectable()
export class ReidentifySpool {
  constructor(
    private readonly database: Database,
    private readonly spools: SpoolsStore,
    private readonly submissions: SubmissionPointers,
    private readonly proposals: ProposalsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { code, expectedVersion, proposal: proposalId }: Input): Promise<void> {
    const byId = actor.accountId;
    return this.database.transaction(async (tx) => {
      const spool = await this.spools.lock(tx, code);
      requireSameVersion(spool.version, expectedVersion);
      if ((await this.submissions.handedInOn([spool.id], tx, byId)).size > 0) throw new Problem(proposalProblems['proposals/own-spool']);
      const { variant, reason } = await this.proposals.seconded(tx, actor, proposalId, 'reidentification', spool.blindCode);
      const named = variant ?? '';
      await this.spools.reidentify(tx, spool, { variant: named, proposalId, reason, byId, at: this.clock.now() });
      await this.audit.record(tx, {
        actorId: byId,
        action: 'spool.reidentified',
        objectType: 'spool',
        objectId: spool.blindCode,
        before: { variant: spool.variant.slug },
        after: { variant: named, proposal: proposalId, reason },
      });
    });
  }
}

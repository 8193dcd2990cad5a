import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { AuditTrail } from '../platform/audit/audit-trail.store.js';
import { Clock } from '../platform/clock/clock.js';
import { Database } from '../platform/database/database.js';
import type { Actor } from '../platform/http/access.js';
import type { ProposalRequest } from '../contract/endpoints/proposals.js';
import { Problem } from '../platform/errors/problem.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import { proposalProblems } from './proposals.errors.js';
import { ProposalsReadModel } from './proposals.read-model.js';
import { ProposalsStore } from './proposals.store.js';
import { whyNotReidentified, whyNotWithdrawn } from './why-never.js';

/** Proposes what another person is to carry out; what could never be carried out is refused at once. */
@Injectable()
export class Propose {
  constructor(
    private readonly database: Database,
    private readonly store: ProposalsStore,
    private readonly proposals: ProposalsReadModel,
    private readonly submissions: SubmissionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  /** @returns the id of the proposal */
  async run(actor: Actor, proposal: ProposalRequest): Promise<string> {
    const { kind, reason } = proposal;
    const about =
      proposal.kind === 'withdrawal'
        ? { object: proposal.submission, variant: null }
        : { object: proposal.spool.trim().toUpperCase(), variant: proposal.variant };
    const fault =
      about.variant === null
        ? whyNotWithdrawn(about.object, (await this.submissions.standing(about.object))?.state ?? null)
        : whyNotReidentified(about.object, about.variant, {
            isNow: (await this.catalogue.spoolByCode(about.object))?.variant.slug ?? null,
            isKnown: (await this.catalogue.variantBySlug(about.variant)) !== null,
          });
    if (fault) throw new Problem(proposalProblems['proposals/never-possible'], fault.detail, [fault]);
    return this.database.transaction(async (tx) => {
      const byId = actor.accountId;
      await this.store.lockProposer(tx, byId);
      const twin = await this.proposals.openTwin(tx, { kind, ...about, byId });
      if (twin !== null) throw new Problem(proposalProblems['proposals/made-before'], `It is open as ${twin}.`);
      const id = await this.store.add(tx, { kind, reason, ...about, byId, at: this.clock.now() });
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

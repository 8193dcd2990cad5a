import { Injectable } from '@nestjs/common';
import { AuditTrail } from '../../platform/audit/audit-trail.store.js';
import { Clock } from '../../platform/clock/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/database.js';
import { Problem } from '../../platform/errors/problem.js';
import type { Actor } from '../../platform/http/access.js';
import { requireSameVersion } from '../../platform/http/if-match.js';
import { notValid } from '../../platform/http/validation.js';
import { ProposalsReadModel } from '../../proposals/proposals.read-model.js';
import { normaliseBlindCode } from '../../contract/blind-code.js';
import { spoolNotOnRecord, unknownReference } from '../catalogue-faults.js';
import { catalogueProblems } from '../catalogue.errors.js';
import { CatalogueStore } from '../catalogue.store.js';
import { SpoolsStore } from './spools.store.js';

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
    private readonly catalogue: CatalogueStore,
    private readonly spools: SpoolsStore,
    private readonly proposals: ProposalsReadModel,
    private readonly audit: AuditTrail,
    private readonly clock: Clock,
  ) {}

  run(actor: Actor, { code, expectedVersion, proposal: proposalId }: Input): Promise<void> {
    const blindCode = normaliseBlindCode(code);
    return this.database.transaction(async (tx) => {
      const spool = await this.spools.lock(tx, blindCode);
      if (!spool) throw spoolNotOnRecord(code);
      requireSameVersion(spool.version, expectedVersion);
      if (await this.spools.hasTested(tx, spool.id, actor.accountId)) throw new Problem(catalogueProblems['catalogue/own-spool']);
      const { variant: slug, reason } = await this.proposedFor(tx, actor, proposalId, blindCode);
      const variant = await this.catalogue.lockVariant(tx, slug);
      if (!variant) throw unknownReference('/variant', 'variant', slug);
      if (variant.id === spool.variantId)
        throw notValid([
          { pointer: '/variant', detail: `The spool is "${slug}" on record already; expected another variant.`, code: 'unchanged' },
        ]);
      await this.spools.reidentify(tx, {
        spoolId: spool.id,
        fromVariantId: spool.variantId,
        toVariantId: variant.id,
        proposalId,
        reason,
        byId: actor.accountId,
        at: this.clock.now(),
      });
      await this.audit.record(tx, {
        actorId: actor.accountId,
        action: 'spool.reidentified',
        objectType: 'spool',
        objectId: blindCode,
        before: { variant: spool.variant.slug },
        after: { variant: slug, proposal: proposalId, reason },
      });
    });
  }

  private async proposedFor(tx: Transaction, actor: Actor, id: string, code: string): Promise<{ variant: string; reason: string }> {
    const { variant, reason } = await this.proposals.seconded(tx, actor, id, 'reidentification', code);
    return { variant: variant ?? '', reason };
  }
}

import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';

export interface NewProposal {
  readonly kind: 'withdrawal' | 'reidentification';
  readonly object: string;
  readonly variant: string | null;
  readonly reason: string;
  readonly byId: string;
  readonly at: Date;
}

export interface NewEnd {
  readonly proposalId: string;
  readonly kind: 'declined' | 'calledOff';
  readonly reason: string;
  readonly byId: string;
  readonly at: Date;
}

/** The only writer of proposals and of how they end. */
@Injectable()
export class ProposalsStore {
  /** Locks a proposal, so that it is not carried out and ended at once. */
  async lock(tx: Transaction, id: string): Promise<void> {
    await tx.$queryRaw`SELECT 1 FROM "proposal" WHERE "id" = ${id}::uuid FOR UPDATE`;
  }

  /** One proposal of a person at a time, so that none is made twice at once. */
  async lockProposer(tx: Transaction, byId: string): Promise<void> {
    await tx.$queryRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`proposals of ${byId}`}, 0))::text`;
  }

  async end(tx: Transaction, end: NewEnd): Promise<void> {
    await tx.proposalEnd.create({ data: end });
  }

  async add(tx: Transaction, proposal: NewProposal): Promise<string> {
    const id = uuid7();
    await tx.proposal.create({ data: { id, ...proposal } });
    return id;
  }
}

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

/** The only writer of proposals. */
@Injectable()
export class ProposalsStore {
  async add(tx: Transaction, proposal: NewProposal): Promise<string> {
    const id = uuid7();
    await tx.proposal.create({ data: { id, ...proposal } });
    return id;
  }
}

import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { proposalProblems } from './proposals.errors.js';
import type { ProposalResponse } from '../contract/endpoints/proposals.js';

const TOLD = {
  by: { select: { displayName: true } },
  withdrawal: { select: { submissionId: true } },
  reidentification: { select: { id: true } },
} satisfies Prisma.ProposalInclude;

type Row = Prisma.ProposalGetPayload<{ include: typeof TOLD }>;

/** Proposals, as people see them and as those who carry them out need them. */
@Injectable()
export class ProposalsReadModel {
  constructor(private readonly database: Database) {}

  /** The last two hundred, newest first. */
  async all(): Promise<ProposalResponse[]> {
    const rows = await this.database.client.proposal.findMany({ include: TOLD, orderBy: { id: 'desc' }, take: 200 });
    return rows.map(toProposal);
  }

  async one(id: string): Promise<ProposalResponse> {
    return toProposal(await this.database.client.proposal.findUniqueOrThrow({ where: { id }, include: TOLD }));
  }

  /**
   * A proposal that the actor may carry out now: of another person, about this, not carried out yet; the database keeps the same rule
   * (two_persons_do_it).
   */
  async seconded(tx: Transaction, actor: Actor, id: string, kind: ProposalResponse['kind'], object: string): Promise<Row> {
    const proposal = await tx.proposal.findUnique({ where: { id }, include: TOLD });
    if (!proposal) throw new Problem(platformProblems['request/not-found'], `No proposal has the id ${id}.`);
    if (proposal.byId === actor.accountId) throw new Problem(proposalProblems['proposals/own-proposal']);
    const isOther = proposal.kind !== kind || proposal.object !== object;
    if (isOther || isCarriedOut(proposal)) {
      const detail = isOther ? `It is a ${proposal.kind} of ${proposal.object}, not a ${kind} of ${object}.` : 'It is carried out already.';
      throw new Problem(proposalProblems['proposals/other-matter'], detail);
    }
    return proposal;
  }
}

const isCarriedOut = ({ withdrawal, reidentification }: Row): boolean => withdrawal !== null || reidentification !== null;

const toProposal = (row: Row): ProposalResponse => ({
  id: row.id,
  kind: row.kind as ProposalResponse['kind'],
  object: row.object,
  variant: row.variant,
  reason: row.reason,
  by: row.by.displayName,
  at: row.at.toISOString(),
  isCarriedOut: isCarriedOut(row),
});

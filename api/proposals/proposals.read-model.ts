import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../accounts/accounts.read-model.js';
import { SpoolRows } from '../catalogue/spools/spool-rows.read-model.js';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { KeyReadings } from '../audit/key-readings.store.js';
import type { ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { Actor } from '../platform/http/access.js';
import { proposalProblems } from './proposals.errors.js';
import type { ProposalResponse, ProposalsQuery, ProposalState } from '../contract/endpoints/proposals.js';

const TOLD = { end: true } satisfies Prisma.ProposalInclude;

type Row = Prisma.ProposalGetPayload<{ include: typeof TOLD }>;

interface ProposalToEnd {
  readonly byId: string;
  readonly isOpen: boolean;
  /** How it stands, in words. */
  readonly says: string;
  readonly kind: string;
  readonly object: string;
}

/** Proposals, as people see them and as those who carry them out need them. */
@Injectable()
export class ProposalsReadModel {
  constructor(
    private readonly database: Database,
    private readonly accounts: AccountsReadModel,
    private readonly spools: SpoolRows,
    private readonly decisions: DecisionsReadModel,
    private readonly keyReadings: KeyReadings,
  ) {}

  /** Newest first. */
  async page(reader: Actor, { state, limit, cursor }: ProposalsQuery): Promise<{ items: ProposalResponse[]; nextCursor: string | null }> {
    const rows = await this.database.client.proposal.findMany({
      where: { ...(state === undefined ? {} : IN_STATE[state]), ...(cursor === undefined ? {} : { id: { lt: cursor } }) },
      include: TOLD,
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const items = await this.told(rows.slice(0, limit));
    await this.noteKeys(reader, items);
    return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
  }

  /** Open ones that this person may carry out or decline: of others. */
  async waitingFor(accountId: string): Promise<ProposalResponse[]> {
    const rows = await this.database.client.proposal.findMany({
      where: { ...IN_STATE.open, byId: { not: accountId } },
      include: TOLD,
      orderBy: { id: 'asc' },
    });
    return this.told(rows);
  }

  async one(reader: Actor, id: string): Promise<ProposalResponse> {
    const row = await this.database.client.proposal.findUniqueOrThrow({ where: { id }, include: TOLD });
    const names = await this.accounts.displayNames(peopleOf(row));
    const proposal = toProposal(row, names, stateOf(row, await this.carriedOut([row])));
    await this.noteKeys(reader, [proposal]);
    return proposal;
  }

  private async told(rows: readonly Row[]): Promise<ProposalResponse[]> {
    const names = await this.accounts.displayNames(rows.flatMap(peopleOf));
    const carriedOut = await this.carriedOut(rows);
    return rows.map((row) => toProposal(row, names, stateOf(row, carriedOut)));
  }

  /** Ids of those that another person carried out. */
  private async carriedOut(rows: readonly Row[], reader?: Transaction): Promise<Set<string>> {
    const ids = rows.map(({ id }) => id);
    return new Set([...(await this.decisions.withdrawnBy(ids, reader)), ...(await this.spools.reidentifiedBy(ids, reader))]);
  }

  /** A proposal to say that a spool is another variant tells what it is. */
  private noteKeys(reader: Actor, proposals: readonly ProposalResponse[]): Promise<void> {
    const codes = proposals.flatMap(({ kind, object }) => (kind === 'reidentification' ? [object] : []));
    return this.keyReadings.note(reader, 'key', { codes });
  }

  /** A proposal as whoever ends it needs it; null when there is none. */
  async toEnd(tx: Transaction, id: string): Promise<ProposalToEnd | null> {
    const row = await tx.proposal.findUnique({ where: { id }, include: TOLD });
    if (!row) return null;
    const state = stateOf(row, await this.carriedOut([row], tx));
    return { byId: row.byId, isOpen: state === 'open', says: WORDS[state], kind: row.kind, object: row.object };
  }

  /** Id of an open proposal of the same person about the same; null when there is none. */
  async openTwin(tx: Transaction, about: Pick<Row, 'kind' | 'object' | 'variant' | 'byId'>): Promise<string | null> {
    const twin = await tx.proposal.findFirst({ where: { ...about, ...IN_STATE.open }, select: { id: true } });
    return twin?.id ?? null;
  }

  /**
   * A proposal that the actor may carry out now: of another person, about this, open still; the database keeps the same rules
   * (two_persons_do_it, ended_proposal_stays_ended).
   */
  async seconded(tx: Transaction, actor: Actor, id: string, kind: ProposalResponse['kind'], object: string): Promise<Row> {
    const proposal = await tx.proposal.findUnique({ where: { id }, include: TOLD });
    if (!proposal) throw new Problem(platformProblems['request/not-found'], `No proposal has the id ${id}.`);
    if (proposal.byId === actor.accountId) throw new Problem(proposalProblems['proposals/own-proposal']);
    const isOther = proposal.kind !== kind || proposal.object !== object;
    const state = stateOf(proposal, await this.carriedOut([proposal], tx));
    if (isOther || state !== 'open') {
      const detail = isOther
        ? `It is a ${proposal.kind} of ${proposal.object}, not a ${kind} of ${object}.`
        : `It is ${WORDS[state]} already.`;
      throw new Problem(proposalProblems['proposals/other-matter'], detail);
    }
    return proposal;
  }
}

const WORDS = { open: 'open', carriedOut: 'carried out', declined: 'declined', calledOff: 'called off' } as const;
const IN_STATE = {
  open: { end: null, withdrawal: null, reidentification: null },
  carriedOut: { OR: [{ withdrawal: { isNot: null } }, { reidentification: { isNot: null } }] },
  declined: { end: { is: { kind: 'declined' } } },
  calledOff: { end: { is: { kind: 'calledOff' } } },
} satisfies Record<ProposalState, Prisma.ProposalWhereInput>;

function stateOf({ id, end }: Row, carriedOut: ReadonlySet<string>): ProposalState {
  if (end) return end.kind as ProposalState;
  return carriedOut.has(id) ? 'carriedOut' : 'open';
}

const peopleOf = ({ byId, end }: Row): string[] => [byId, ...(end ? [end.byId] : [])];

const toProposal = (row: Row, names: ById<string>, state: ProposalState): ProposalResponse => ({
  id: row.id,
  kind: row.kind as ProposalResponse['kind'],
  object: row.object,
  variant: row.variant,
  reason: row.reason,
  by: names.of(row.byId),
  at: row.at.toISOString(),
  state,
  end: row.end && { reason: row.end.reason, by: names.of(row.end.byId), at: row.end.at.toISOString() },
});

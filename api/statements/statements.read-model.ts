import { Injectable } from '@nestjs/common';
import { missingOf } from '../contract/endpoints/statements.js';
import type { HouseStatementResponse, RemarkResponse } from '../contract/endpoints/statements.js';
import type { PublishedRemark } from '../contract/documents/remarks-document.js';
import { Database } from '../platform/database/database.js';
import type { Prisma } from '../platform/database/generated/client.js';
import type { HouseEvidence, RemarkEvidence } from '../reckoning/evidence/statement-evidence.js';

const TOLD = { end: true } satisfies Prisma.RemarkInclude;
type Row = Prisma.RemarkGetPayload<{ include: typeof TOLD }>;

/** What the house says, as people see it and as releases take it. */
@Injectable()
export class StatementsReadModel {
  constructor(private readonly database: Database) {}

  /** What it says of itself now. */
  async house(): Promise<HouseStatementResponse> {
    const row = await this.newest();
    const said = row && {
      contact: row.contact,
      people: row.people as HouseStatementResponse['people'],
      funding: row.funding,
      interests: row.interests,
      rightOfReply: row.rightOfReply,
    };
    return {
      ...(said ?? { contact: null, people: [], funding: null, interests: null, rightOfReply: null }),
      number: row?.number ?? 0,
      at: row?.at.toISOString() ?? null,
      missing: missingOf(said),
    };
  }

  /** What it said of itself at a time; undefined when it had said nothing. */
  async houseAt(at: Date): Promise<HouseEvidence | undefined> {
    const row = await this.newest(at);
    if (!row) return undefined;
    const { number, contact, people, funding, interests, rightOfReply } = row;
    const named = people as HouseEvidence['people'];
    return { statement: number, statedOn: dayOf(row.at), contact, people: named, funding, interests, rightOfReply };
  }

  private newest(at?: Date) {
    return this.database.client.houseStatement.findFirst({
      where: at ? { at: { lte: at } } : {},
      orderBy: { number: 'desc' },
    });
  }

  async remarks(): Promise<RemarkResponse[]> {
    const rows = await this.database.client.remark.findMany({ include: TOLD, orderBy: { id: 'desc' } });
    const items = rows.map(toRemark);
    return [...items.filter(({ end }) => end === null), ...items.filter(({ end }) => end !== null)];
  }

  async remark(id: string): Promise<RemarkResponse> {
    return toRemark(await this.database.client.remark.findUniqueOrThrow({ where: { id }, include: TOLD }));
  }

  /** Remarks that stood at a time and touch entries of an edition: caveats, then replies; oldest first. */
  async standingAt(at: Date, edition: string, entries: readonly Entry[]): Promise<RemarkEvidence[]> {
    const rows = await this.database.client.remark.findMany({
      where: {
        at: { lte: at },
        AND: [{ OR: [{ end: null }, { end: { at: { gt: at } } }] }, { OR: [{ editionSlug: null }, { editionSlug: edition }] }],
      },
      include: TOLD,
      orderBy: [{ kind: 'asc' }, { at: 'asc' }, { id: 'asc' }],
    });
    return rows.flatMap((row) => {
      const about = aboutOf(row);
      const variants = entries.filter((entry) => about.slug === entry[about.kind]).map(({ variant }) => variant);
      const { category, words, signedBy } = row;
      const kind = row.kind as PublishedRemark['kind'];
      return variants.length === 0 ? [] : [{ kind, about, category, words, signedBy, on: dayOf(row.at), variants }];
    });
  }
}

/** An entry as remarks find it. */
export interface Entry {
  readonly variant: string;
  readonly line: string;
  readonly construction: string;
}

const dayOf = (at: Date): string => at.toISOString().slice(0, 10);

function aboutOf({ construction, lineSlug, variantSlug }: Row): RemarkResponse['about'] {
  if (construction !== null) return { kind: 'construction', slug: construction };
  return lineSlug === null ? { kind: 'variant', slug: variantSlug ?? '' } : { kind: 'line', slug: lineSlug };
}

const toRemark = (row: Row): RemarkResponse => ({
  id: row.id,
  kind: row.kind as RemarkResponse['kind'],
  about: aboutOf(row),
  edition: row.editionSlug,
  category: row.category,
  words: row.words,
  signedBy: row.signedBy,
  at: row.at.toISOString(),
  supersedes: row.supersedesId,
  end: row.end && { reason: row.end.reason, at: row.end.at.toISOString() },
});

import { Injectable } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import type { QueryResponse } from '../contract/endpoints/reviews.js';

const MOST_PER_PAGE = 50;

/** Questions on a tester's own submissions. */
@Injectable()
export class QueriesReadModel {
  constructor(private readonly database: Database) {}

  /** Newest first, open ones among them. */
  async ofTester(testerId: string, cursor?: string): Promise<{ items: QueryResponse[]; nextCursor: string | null }> {
    const rows = await this.database.client.query.findMany({
      where: { submission: { testerId }, ...(cursor === undefined ? {} : { id: { lt: cursor } }) },
      include: { submission: { select: { reference: true } } },
      orderBy: { id: 'desc' },
      take: MOST_PER_PAGE + 1,
    });
    const page = rows.slice(0, MOST_PER_PAGE);
    return { items: page.map(toQuery), nextCursor: rows.length > page.length ? (page.at(-1)?.id ?? null) : null };
  }

  async one(id: string): Promise<QueryResponse> {
    return toQuery(
      await this.database.client.query.findUniqueOrThrow({ where: { id }, include: { submission: { select: { reference: true } } } }),
    );
  }
}

interface QueryRow {
  readonly kind: string;
  readonly id: string;
  readonly submission: { readonly reference: string };
  readonly revision: number;
  readonly specimens: number[];
  readonly question: string;
  readonly askedAt: Date;
  readonly answer: string | null;
  readonly answeredAt: Date | null;
}

const toQuery = ({ submission, askedAt, answeredAt, id, revision, kind, specimens, question, answer }: QueryRow): QueryResponse => ({
  kind: kind as QueryResponse['kind'],
  id,
  submission: submission.reference,
  revision,
  specimens,
  question,
  askedAt: askedAt.toISOString(),
  answer,
  answeredAt: answeredAt?.toISOString() ?? null,
});

import { Injectable } from '@nestjs/common';
import { DecisionsReadModel } from '../decisions/decisions.read-model.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import type { QueriesQuery, QueryResponse } from '../contract/endpoints/reviews.js';

/** Questions on a tester's own submissions. */
@Injectable()
export class QueriesReadModel {
  constructor(
    private readonly decisions: DecisionsReadModel,
    private readonly submissions: SubmissionsReadModel,
  ) {}

  /** Newest first, open ones among them. */
  async ofTester(testerId: string, { limit, cursor }: QueriesQuery): Promise<{ items: QueryResponse[]; nextCursor: string | null }> {
    const rows = await this.decisions.queriesTo(testerId, limit + 1, cursor);
    const page = rows.slice(0, limit);
    return { items: await this.toQueries(page), nextCursor: rows.length > page.length ? (page.at(-1)?.id ?? null) : null };
  }

  /** One that is known to be there. */
  async one(id: string): Promise<QueryResponse | undefined> {
    return (await this.toQueries([await this.decisions.query(id)]))[0];
  }

  private async toQueries(rows: readonly QueryRow[]): Promise<QueryResponse[]> {
    const submissions = await this.submissions.known(rows.map(({ submissionId }) => submissionId));
    return rows.map((row) => toQuery(row, submissions.of(row.submissionId).reference));
  }
}

interface QueryRow {
  readonly kind: string;
  readonly id: string;
  readonly submissionId: string;
  readonly revision: number;
  readonly specimens: number[];
  readonly question: string;
  readonly askedAt: Date;
  readonly answer: string | null;
  readonly answeredAt: Date | null;
}

const toQuery = (
  { askedAt, answeredAt, id, revision, kind, specimens, question, answer }: QueryRow,
  submission: string,
): QueryResponse => ({
  kind: kind as QueryResponse['kind'],
  id,
  submission,
  revision,
  specimens,
  question,
  askedAt: askedAt.toISOString(),
  answer,
  answeredAt: answeredAt?.toISOString() ?? null,
});

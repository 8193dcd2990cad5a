import { Injectable } from '@nestjs/common';
import type { Decision } from '../../contract/decisions.js';
import { DecisionsReadModel } from '../../decisions/decisions.read-model.js';
import { Database } from '../../platform/database/database.js';
import { RevisionParts } from './revision-parts.read-model.js';
import { SubmissionNames } from './submission-names.read-model.js';
import type { Beside, DetailRow } from './submission-rows.read-model.js';

interface ReviewRow {
  readonly submissionId: string;
  readonly revision: number;
  readonly decision: Decision;
  readonly reason: string | null;
  readonly at: Date;
  readonly reviewer: string;
}

/** Puts beside submissions what others keep of them: names, findings, and all that reviewers and editors said. */
@Injectable()
export class BesideSubmissions {
  constructor(
    private readonly database: Database,
    private readonly names: SubmissionNames,
    private readonly parts: RevisionParts,
    private readonly decisions: DecisionsReadModel,
  ) {}

  /** With as many statements for one submission as for a page of them. */
  async of(rows: readonly DetailRow[]): Promise<(row: DetailRow) => Beside> {
    const ids = rows.map(({ id }) => id);
    const [names, parts, reviews, queries, withdrawals] = await Promise.all([
      this.names.of(rows),
      this.parts.of(rows.flatMap(({ revisions }) => revisions)),
      this.reviews(ids),
      this.decisions.queriesOf(ids),
      this.decisions.withdrawalsOf(ids),
    ]);
    return (row) => {
      const [revision] = row.revisions;
      const withdrawal = withdrawals.get(row.id);
      return {
        names: names(row),
        parts: revision ? parts(revision) : null,
        reviews: reviews.filter(({ submissionId }) => submissionId === row.id).map(({ review }) => review),
        queries: queries
          .filter(({ submissionId }) => submissionId === row.id)
          .map(({ id, revision: asked, specimens, question, askedAt, answer }) => ({
            id,
            revision: asked,
            specimens,
            question,
            askedAt: askedAt.toISOString(),
            answer,
          })),
        withdrawal: withdrawal ? { reason: withdrawal.reason, at: withdrawal.at.toISOString() } : null,
      };
    };
  }

  /** Of all their revisions, oldest first. */
  private async reviews(submissionIds: readonly string[]) {
    const rows = await this.database.client.$queryRaw<ReviewRow[]>`
      SELECT r."submission_id"::text AS "submissionId", r."number" AS "revision", v."decision", v."reason", v."at", a."display_name" AS "reviewer"
      FROM "submission_revision" r JOIN "review" v ON v."revision_id" = r."id" JOIN "account" a ON a."id" = v."reviewer_id"
      WHERE r."submission_id" = ANY(${[...submissionIds]}::uuid[]) ORDER BY v."at"`;
    return rows.map(({ submissionId, at, ...review }) => ({ submissionId, review: { ...review, at: at.toISOString() } }));
  }
}

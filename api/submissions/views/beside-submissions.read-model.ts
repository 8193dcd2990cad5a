import { Injectable } from '@nestjs/common';
import { AccountsReadModel } from '../../accounts/accounts.read-model.js';
import { DecisionsReadModel } from '../../decisions/decisions.read-model.js';
import { among } from '../../platform/database/by-id.js';
import { Database } from '../../platform/database/database.js';
import { RevisionParts } from './revision-parts.read-model.js';
import { SubmissionNames } from './submission-names.read-model.js';
import type { Beside, DetailRow } from './submission-rows.read-model.js';

/** Puts beside submissions what others keep of them: names, findings, and all that reviewers and editors said. */
@Injectable()
export class BesideSubmissions {
  constructor(
    private readonly database: Database,
    private readonly names: SubmissionNames,
    private readonly parts: RevisionParts,
    private readonly decisions: DecisionsReadModel,
    private readonly accounts: AccountsReadModel,
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
    const revisions = await this.database.client.submissionRevision.findMany({
      where: { submissionId: among(submissionIds) },
      select: { id: true, submissionId: true, number: true },
    });
    const found = await this.decisions.reviewsOf(revisions.map(({ id }) => id));
    const reviewers = await this.accounts.displayNames(found.map(({ reviewerId }) => reviewerId));
    const revisionOf = new Map(revisions.map((revision) => [revision.id, revision]));
    return found.map(({ revisionId, decision, reason, at, reviewerId }) => ({
      submissionId: revisionOf.get(revisionId)?.submissionId,
      review: {
        revision: revisionOf.get(revisionId)?.number ?? 0,
        decision,
        reason,
        at: at.toISOString(),
        reviewer: reviewers.of(reviewerId),
      },
    }));
  }
}

import { Injectable } from '@nestjs/common';
import type { Decision } from '../contract/decisions.js';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/database.js';

/** What reviewers and editors put on record of submissions, by the ids of these and of their revisions. */
@Injectable()
export class DecisionsReadModel {
  constructor(private readonly database: Database) {}

  /** Reviews of revisions, oldest first. */
  async reviewsOf(revisionIds: readonly string[]) {
    const rows = await this.database.client.review.findMany({ where: { revisionId: among(revisionIds) }, orderBy: { at: 'asc' } });
    return rows.map((row) => ({ ...row, decision: row.decision as Decision }));
  }

  /** Why specimens of revisions were set aside, by the specimen's id; one that was not has no reason. */
  async setAsideIn(revisionIds: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.setAside.findMany({ where: { review: { revisionId: among(revisionIds) } } });
    return new ById(rows.map(({ specimenId, reason }) => [specimenId, reason]));
  }

  /** Questions on submissions, oldest first. */
  async queriesOf(submissionIds: readonly string[]) {
    return this.database.client.query.findMany({ where: { submissionId: among(submissionIds) }, orderBy: { id: 'asc' } });
  }

  /** Questions on one tester's submissions, newest first, from the cursor on. */
  async queriesTo(testerId: string, most: number, cursor?: string) {
    return this.database.client.query.findMany({
      where: { submission: { testerId }, ...(cursor === undefined ? {} : { id: { lt: cursor } }) },
      orderBy: { id: 'desc' },
      take: most,
    });
  }

  /** A question that is known to be there. */
  async query(id: string) {
    return this.database.client.query.findUniqueOrThrow({ where: { id } });
  }

  async hasOpenQuery(submissionId: string): Promise<boolean> {
    return (await this.database.client.query.count({ where: { submissionId, answeredAt: null } })) > 0;
  }

  /** Withdrawals by the ids of the submissions; one that stands has none. */
  async withdrawalsOf(submissionIds: readonly string[]) {
    const rows = await this.database.client.withdrawal.findMany({ where: { submissionId: among(submissionIds) } });
    return new ById(rows.map((row) => [row.submissionId, row]));
  }

  /** Those among proposals by which something was withdrawn. */
  async withdrawnBy(proposalIds: readonly string[], reader: Transaction = this.database.client): Promise<string[]> {
    const rows = await reader.withdrawal.findMany({ where: { proposalId: among(proposalIds) }, select: { proposalId: true } });
    return rows.flatMap(({ proposalId }) => proposalId ?? []);
  }

  /** Withdrawals since a moment. */
  withdrawnSince(moment: Date) {
    return this.database.client.withdrawal.findMany({ where: { at: { gt: moment } }, select: { submissionId: true, at: true } });
  }

  /** Those among submissions on which a question waits for its answer. */
  async openQueriesOn(submissionIds: readonly string[]): Promise<Set<string>> {
    const where = { submissionId: among(submissionIds), answeredAt: null };
    return new Set((await this.database.client.query.findMany({ where, select: { submissionId: true } })).map((row) => row.submissionId));
  }

  /** Who has claimed the review of a submission, if that holds still. */
  async claimOf(submissionId: string, now: Date) {
    return this.database.client.reviewClaim.findUnique({ where: { submissionId, expiresAt: { gt: now } } });
  }

  /** Whether a reviewer has claimed a submission, or judged its revision. */
  async isInReview(submissionId: string, revisionId: string): Promise<boolean> {
    const claims = await this.database.client.reviewClaim.count({ where: { submissionId } });
    return claims + (await this.database.client.judgement.count({ where: { revisionId } })) > 0;
  }

  async hasJudged(revisionId: string, reviewerId: string): Promise<boolean> {
    return (await this.database.client.judgement.count({ where: { revisionId, reviewerId } })) > 0;
  }
}

import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { SettingAside, SubmissionUnderReview } from './review.js';
import type { Decision } from '../contract/decisions.js';

interface NewReview {
  readonly reviewerId: string;
  readonly decision: Decision;
  readonly reason: string | null;
  readonly at: Date;
}

/** The only writer of reviews, claims, judgements, queries and withdrawals. */
@Injectable()
export class ReviewsStore {
  /** Locks the submission's row and reads its current revision; null when there is none with this reference, or only a draft. */
  async lock(tx: Transaction, reference: string): Promise<SubmissionUnderReview | null> {
    const locked = await tx.$queryRaw<
      { id: string }[]
    >`SELECT "id"::text FROM "submission" WHERE "reference" = ${reference} AND "state" <> 'draft' FOR UPDATE`;
    const id = locked[0]?.id;
    if (id === undefined) return null;
    const submission = await tx.submission.findUniqueOrThrow({ where: { id }, include: { spool: { select: { blindCode: true } } } });
    const revision = await tx.submissionRevision.findUniqueOrThrow({
      where: { submissionId_number: { submissionId: id, number: submission.revision } },
      select: {
        id: true,
        specimens: { select: { id: true, number: true, validity: true }, orderBy: { number: 'asc' } },
        findings: { select: { id: true, code: true, severity: true, resolution: true }, orderBy: { id: 'asc' } },
      },
    });
    const { state, version, testerId, spool } = submission;
    const { id: revisionId, specimens, findings } = revision;
    return {
      id,
      reference,
      state,
      revision: submission.revision,
      version,
      testerId,
      spoolCode: spool.blindCode,
      revisionId,
      specimens,
      findings,
    };
  }

  async addReview(
    tx: Transaction,
    { revisionId, specimens }: SubmissionUnderReview,
    review: NewReview,
    setAside: readonly SettingAside[] = [],
  ): Promise<void> {
    const { id: reviewId } = await tx.review.create({ data: { revisionId, ...review } });
    const ids = new Map(specimens.map((specimen) => [specimen.number, specimen.id]));
    await tx.setAside.createMany({
      data: setAside.map(({ specimen, reason }) => ({ specimenId: ids.get(specimen) ?? '', reviewId, reason })),
    });
  }

  async askQuery(
    tx: Transaction,
    query: {
      submissionId: string;
      revision: number;
      askedById: string;
      askedAt: Date;
      kind: string;
      specimens: number[];
      question: string;
    },
  ): Promise<void> {
    await tx.query.create({ data: query });
  }

  /** Who has claimed the review of a submission, if that holds still. */
  async claimOf(tx: Transaction, submissionId: string, now: Date) {
    const claim = await tx.reviewClaim.findUnique({ where: { submissionId }, include: { reviewer: { select: { displayName: true } } } });
    return claim && claim.expiresAt > now ? claim : null;
  }

  async claim(
    tx: Transaction,
    { submissionId, ...claim }: { submissionId: string; reviewerId: string; claimedAt: Date; expiresAt: Date },
  ): Promise<void> {
    await tx.reviewClaim.upsert({ where: { submissionId }, create: { submissionId, ...claim }, update: claim });
  }

  async giveBack(tx: Transaction, submissionId: string, reviewerId: string): Promise<void> {
    await tx.reviewClaim.deleteMany({ where: { submissionId, reviewerId } });
  }

  async hasJudged(tx: Transaction, revisionId: string, reviewerId: string): Promise<boolean> {
    return (await tx.judgement.count({ where: { revisionId, reviewerId } })) > 0;
  }

  async addJudgement(
    tx: Transaction,
    judgement: { revisionId: string; reviewerId: string; verdict: string; words: string; at: Date },
  ): Promise<void> {
    await tx.judgement.create({ data: judgement });
  }

  async addWithdrawal(
    tx: Transaction,
    withdrawal: { submissionId: string; byId: string; proposalId: string; reason: string; at: Date },
  ): Promise<void> {
    await tx.withdrawal.create({ data: withdrawal });
  }

  /** Locks a query of one tester's own submissions. */
  async lockOwnQuery(tx: Transaction, id: string, testerId: string) {
    const rows = await tx.$queryRaw<{ reference: string; answeredAt: Date | null }[]>`
      SELECT s."reference", q."answered_at" AS "answeredAt" FROM "query" q JOIN "submission" s ON s."id" = q."submission_id"
      WHERE q."id" = ${id}::uuid AND s."tester_id" = ${testerId}::uuid FOR UPDATE OF q`;
    return rows[0] ?? null;
  }

  answerQuery(tx: Transaction, id: string, answer: string, answeredAt: Date) {
    return tx.query.update({ where: { id }, data: { answer, answeredAt } });
  }
}

import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import type { Decision } from '../contract/decisions.js';

interface NewReview {
  readonly reviewerId: string;
  readonly decision: Decision;
  readonly reason: string | null;
  readonly at: Date;
}

/** A revision that is decided on, with its specimens. */
interface ReviewedRevision {
  readonly revisionId: string;
  readonly specimens: readonly { readonly id: string; readonly number: number }[];
}

/** The only writer of reviews, claims, judgements, queries and withdrawals. */
@Injectable()
export class DecisionsStore {
  async addReview(
    tx: Transaction,
    { revisionId, specimens }: ReviewedRevision,
    review: NewReview,
    setAside: readonly { readonly specimen: number; readonly reason: string }[] = [],
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

  async claim(
    tx: Transaction,
    { submissionId, ...claim }: { submissionId: string; reviewerId: string; claimedAt: Date; expiresAt: Date },
  ): Promise<void> {
    await tx.reviewClaim.upsert({ where: { submissionId }, create: { submissionId, ...claim }, update: claim });
  }

  async giveBack(tx: Transaction, submissionId: string, reviewerId: string): Promise<void> {
    await tx.reviewClaim.deleteMany({ where: { submissionId, reviewerId } });
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

  /** Locks a question; null when there is none. */
  async lockQuery(tx: Transaction, id: string) {
    const rows = await tx.$queryRaw<{ submissionId: string; answeredAt: Date | null }[]>`
      SELECT "submission_id"::text AS "submissionId", "answered_at" AS "answeredAt" FROM "query" WHERE "id" = ${id}::uuid FOR UPDATE`;
    return rows[0] ?? null;
  }

  answerQuery(tx: Transaction, id: string, answer: string, answeredAt: Date) {
    return tx.query.update({ where: { id }, data: { answer, answeredAt } });
  }
}

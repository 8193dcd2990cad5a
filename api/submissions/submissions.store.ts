import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/database.js';
import { Prisma } from '../platform/database/generated/client.js';
import { uuid7 } from '../platform/identifiers/uuid7.js';
import type { ExaminedSubmission, StorableRevision } from './examined-submission.js';
import type { LockedSubmission, SubmissionState } from './submission.js';

export interface NewSubmission {
  readonly reference: string;
  readonly testerId: string;
  readonly createdAt: Date;
  readonly examined: ExaminedSubmission;
}

export interface NewRevision {
  readonly submissionId: string;
  readonly number: number;
  readonly handedInAt: Date;
  readonly revision: StorableRevision;
}

export interface NewDraft {
  readonly reference: string;
  readonly testerId: string;
  readonly createdAt: Date;
  readonly editionId: string;
  readonly spoolId: string;
  readonly methodVersionId: string;
  readonly benchDay: string;
  readonly draft: object;
}

const toJson = (value: object): Prisma.InputJsonValue => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;

/** The only writer of submissions, their drafts and revisions; what follows a decision is written by the reviews' store. */
@Injectable()
export class SubmissionsStore {
  /**
   * Takes running numbers of an open edition. The row's lock, held to the end of the transaction, lets nobody take the same and
   * nobody close the edition meanwhile.
   * @returns the first of the numbers; null when the edition is not open
   */
  async takeNumbers(tx: Transaction, editionId: string, count: number): Promise<number | null> {
    const rows = await tx.$queryRaw<{ last: number }[]>`
      UPDATE "edition" SET "submissions_numbered" = "submissions_numbered" + ${count}
      WHERE "id" = ${editionId}::uuid AND "state" = 'open' RETURNING "submissions_numbered" AS "last"`;
    return rows[0] ? rows[0].last - count + 1 : null;
  }

  /** Whether the edition is open, and stays so to the end of the transaction. */
  async holdOpen(tx: Transaction, editionId: string): Promise<boolean> {
    const rows = await tx.$queryRaw<unknown[]>`SELECT 1 FROM "edition" WHERE "id" = ${editionId}::uuid AND "state" = 'open' FOR SHARE`;
    return rows.length > 0;
  }

  /** Locks a submission's row; null when there is none. */
  async lock(tx: Transaction, reference: string): Promise<LockedSubmission | null> {
    const rows = await tx.$queryRaw<{ id: string }[]>`SELECT "id"::text FROM "submission" WHERE "reference" = ${reference} FOR UPDATE`;
    if (!rows[0]) return null;
    const row = await tx.submission.findUniqueOrThrow({ where: { id: rows[0].id } });
    return { ...row, state: row.state as SubmissionState };
  }

  async hasOpenQuery(tx: Transaction, submissionId: string): Promise<boolean> {
    return (await tx.query.count({ where: { submissionId, answeredAt: null } })) > 0;
  }

  /** Stores first revisions with their submissions: one statement per table, however many they are. */
  async create(tx: Transaction, submissions: readonly NewSubmission[]): Promise<void> {
    const rows = submissions.map(({ reference, testerId, createdAt, examined }) => ({
      id: uuid7(createdAt.getTime()),
      reference,
      testerId,
      createdAt,
      editionId: examined.editionId,
      spoolId: examined.spoolId,
      methodVersionId: examined.methodVersionId,
      benchDay: new Date(examined.benchDay),
      state: 'submitted',
      revision: 1,
    }));
    await tx.submission.createMany({ data: rows });
    const revisions = submissions.map(({ createdAt, examined }, index) => ({
      submissionId: rows[index]!.id,
      number: 1,
      handedInAt: createdAt,
      revision: examined.revision,
    }));
    await this.addRevisions(tx, revisions);
  }

  async addRevisions(tx: Transaction, revisions: readonly NewRevision[]): Promise<void> {
    const withIds = revisions.map((one) => ({ id: uuid7(one.handedInAt.getTime()), ...one }));
    await tx.submissionRevision.createMany({ data: withIds.map(toRevisionRow) });
    await tx.submissionInstrument.createMany({
      data: withIds.flatMap(({ id, revision }) => revision.instruments.map((instrument) => ({ revisionId: id, ...instrument }))),
    });
    await tx.finding.createMany({
      data: withIds.flatMap(({ id, handedInAt, revision }) =>
        revision.findings.map(({ code, severity, detail }) => ({
          id: uuid7(handedInAt.getTime()),
          revisionId: id,
          code,
          severity,
          detail: toJson(detail),
        })),
      ),
    });
    const specimens = withIds.flatMap(({ id, handedInAt, revision }) =>
      revision.specimens.map((specimen) => ({ id: uuid7(handedInAt.getTime()), revisionId: id, ...specimen })),
    );
    await tx.specimen.createMany({ data: specimens.map(({ readings: _, ...specimen }) => specimen) });
    await tx.reading.createMany({
      data: specimens.flatMap(({ id, readings }) => readings.map((reading) => ({ id: uuid7(), specimenId: id, ...reading }))),
    });
  }

  /** A draft or a returned submission becomes submitted; what its new revision says of itself stands on the row too. */
  handIn(tx: Transaction, id: string, { spoolId, methodVersionId, benchDay }: ExaminedSubmission) {
    return tx.submission.update({
      where: { id },
      data: {
        state: 'submitted',
        draft: Prisma.DbNull,
        revision: { increment: 1 },
        version: { increment: 1 },
        spoolId,
        methodVersionId,
        benchDay: new Date(benchDay),
      },
    });
  }

  async createDraft(tx: Transaction, { draft, benchDay, ...row }: NewDraft): Promise<void> {
    await tx.submission.create({
      data: { ...row, benchDay: new Date(benchDay), draft: toJson(draft), state: 'draft', id: uuid7(row.createdAt.getTime()) },
    });
  }

  async saveDraft(
    tx: Transaction,
    id: string,
    { draft, benchDay, spoolId, methodVersionId }: Pick<NewDraft, 'draft' | 'benchDay' | 'spoolId' | 'methodVersionId'>,
  ): Promise<void> {
    await tx.submission.update({
      where: { id },
      data: { draft: toJson(draft), benchDay: new Date(benchDay), spoolId, methodVersionId, version: { increment: 1 } },
    });
  }

  async deleteDraft(tx: Transaction, id: string): Promise<void> {
    await tx.submission.delete({ where: { id } });
  }
}

const toRevisionRow = ({ id, submissionId, number, handedInAt, revision }: NewRevision & { id: string }) => {
  const { instruments: _i, specimens: _s, findings: _f, figures, ...columns } = revision;
  return { id, submissionId, number, handedInAt, ...columns, figures: toJson(figures) };
};
